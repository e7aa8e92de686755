import { Text } from '@react-pdf/renderer';
import { Children, type ComponentProps, type ReactNode, useContext } from 'react';
import { Dialled, dialledParts } from './dialled';
import { fontsForDialling, fontsForWords } from './fonts/fonts-for-words';

type TextProps = Exclude<ComponentProps<typeof Text>, { x: string | number }>;

/** The writer's own mark for a place where a line never ends. */
const NEVER = 10_000;

/**
 * A text on paper: all papers set their texts with this and not with the writer's own element, so that words stay
 * whole in every script and numbers to be dialled have plain zeros. Texts inside of one another are Words too.
 */
export function Words({ children, ...props }: TextProps) {
  const numbers = useContext(Dialled);
  return <Text hyphenationPenalty={NEVER} {...props}>{Children.map(children, (child) => setWords(child, numbers))}</Text>;
}

function setWords(child: ReactNode, numbers: readonly string[]): ReactNode {
  if (typeof child !== 'string' && typeof child !== 'number') return child;
  const pieces = dialledParts(String(child), numbers).flatMap(({ text, dialled }) => (dialled ? fontsForDialling(text) : fontsForWords(text)));
  return pieces.map(({ text, families }, index) => <Text key={index} style={{ fontFamily: families }}>{text}</Text>);
}
