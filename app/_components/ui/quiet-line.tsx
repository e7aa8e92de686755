import { CAUTION } from '@/lib/wording/caution';

export function QuietLine() {
  return <footer className="quiet"><p>{CAUTION}</p></footer>;
}
