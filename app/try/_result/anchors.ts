import { questionAnchor } from '../_answers/question-parts';

/** Where a risk is told in full. */
export const riskAnchor = (id: string): string => `risk-${id}`;

/** On this page everything is a part of the page. */
export const addressOfQuestion = (id: string): string => `#${questionAnchor(id)}`;
export const addressOfRisk = (id: string): string => `#${riskAnchor(id)}`;
