import { Text } from '@react-pdf/renderer';
import { Children, type ComponentProps, type ReactNode } from 'react';
import { fontsForWords } from './fonts/fonts-for-words';

type TextProps = Exclude<ComponentProps<typeof Text>, { x: string | number }>;

/** The writer's own mark for a place where a line never ends. */
const NEVER = 10_000;

/**
 * A text on paper: all papers set their texts with this and not with the writer's own element, so that words stay
 * whole in every script. Texts inside of one another are Words too.
 */
export function Words({ children, ...props }: TextProps) {
  return <Text hyphenationPenalty={NEVER} {...props}>{Children.map(children, setWords)}</Text>;
}

function setWords(child: ReactNode): ReactNode {
  if (typeof child !== 'string' && typeof child !== 'number') return child;
  const pieces = fontsForWords(String(child));
  return pieces.map(({ text, families }, index) => <Text key={index} style={{ fontFamily: families }}>{text}</Text>);
}
