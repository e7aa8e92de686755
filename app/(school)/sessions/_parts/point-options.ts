import type { Option } from '@/app/_components/form/form-fields';
import { POINT_ANSWERS } from '@/lib/sessions/check-points';

/** The three answers of every point; none is chosen beforehand. */
export const POINT_OPTIONS: readonly Option[] = POINT_ANSWERS.map((answer) => ({ value: answer, label: answer.charAt(0).toUpperCase() + answer.slice(1) }));
