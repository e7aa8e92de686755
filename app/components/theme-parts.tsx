import { Button } from '@/app/_components/ui/button';
import { GradeMark } from '@/app/_components/ui/grade-mark';
import { Notice } from '@/app/_components/ui/notice';
import { Section } from '@/app/_components/ui/section';
import { NumberField } from '@/app/_components/ui/text-field';

export function ThemeParts() {
  return (
    <Section id="themes" title="Light and dark, the same parts">
      <div className="duo">
        <Pane theme="light" />
        <Pane theme="dark" />
      </div>
    </Section>
  );
}

function Pane({ theme }: { readonly theme: 'light' | 'dark' }) {
  return (
    <div className="pane" data-theme={theme}>
      <p className="row"><GradeMark grade="low" /><GradeMark grade="moderate" /><GradeMark grade="high" /><GradeMark grade="extreme" /></p>
      <p className="row"><Button kind="main">Save</Button><Button>Back</Button><Button kind="now">Isolate</Button></p>
      <NumberField id={`pane-${theme}`} label="Cell 3" unit="V" error="Did you mean 3.41?" defaultValue="34.1" />
      <Notice level={3} kind="act" title="W-11 must be isolated" />
      <Notice level={3} kind="not sure" title="Air changes not known" />
      <p className="muted">Lesser words.</p>
    </div>
  );
}
