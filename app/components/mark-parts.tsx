import { GradeMark } from '@/app/_components/ui/grade-mark';
import { Icon, type IconName } from '@/app/_components/ui/icon';
import { ScientificNumber } from '@/app/_components/ui/scientific-number';
import { Section } from '@/app/_components/ui/section';
import { Stat, Stats } from '@/app/_components/ui/stat';
import type { GradeOrNone } from '@/lib/core/result';

const GRADES: readonly GradeOrNone[] = ['low', 'moderate', 'high', 'extreme', 'not applicable'];
const ICONS: readonly IconName[] = ['bang', 'busy', 'check', 'cross', 'down', 'file', 'left', 'minus', 'plus', 'right', 'undo'];

export function MarkParts() {
  return (
    <Section id="marks" title="Marks and figures" aside="word, shape and colour; seen without colour they still differ">
      <p className="row">{GRADES.map((grade) => <GradeMark key={grade} grade={grade} />)}</p>
      <p className="row after">{GRADES.map((grade) => <GradeMark key={grade} grade={grade} size="big" />)}</p>
      <p className="row after"><GradeMark grade="moderate" couldKill /><GradeMark grade="high" word="serious" /></p>
      <p className="row after small">{ICONS.map((name) => <span key={name} className="row"><Icon name={name} /> {name}</span>)}</p>
      <div className="after">
        <Stats>
          <Stat label="energy at the table" figure="50" unit="Wh" />
          <Stat label="a battery fire, about once in" figure="6.3" unit="seasons" range="between 2.1 and 40" />
          <Stat label="of the harm comes from smoke" figure="59" unit="%" />
        </Stats>
      </div>
      <p className="after">In figures: <ScientificNumber value={0.0228} /> a season.</p>
    </Section>
  );
}
