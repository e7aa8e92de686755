import type { Metadata } from 'next';
import Link from 'next/link';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormSubmit } from '@/app/_components/form/form-fields';
import { EmergencyFields, SchoolNameFields, WritingFields } from '@/app/_components/school/school-fields';
import { MarginNote } from '@/app/_components/ui/margin-note';
import { PageHead } from '@/app/_components/ui/page-head';
import { Section } from '@/app/_components/ui/section';
import { Sheet } from '@/app/_components/ui/sheet';
import { can } from '@/lib/access/can';
import { requireMay } from '@/lib/server/actor';
import { schoolCertificate } from '@/lib/server/papers/certificates';
import { currentSchool } from '@/lib/server/people/current-school';
import { changeSchoolAction } from './actions';
import { CertificatePart } from './certificate-part';
import { SchoolFacts } from './school-facts';

export const metadata: Metadata = { title: 'School' };

export default async function SchoolPage() {
  const actor = await requireMay('school.read');
  const [school, certificate] = [await currentSchool(actor), await schoolCertificate(actor)];
  if (!can(actor.role, 'school.change')) return <Sheet><PageHead title={school.schoolName} lead="A safety officer can change this." /><SchoolFacts school={school} /><CertificatePart certificate={certificate} style={school} /></Sheet>;
  return (
    <Sheet margin={<MarginNote title="Where it is shown">Number and meeting places stand on the emergency page and on every paper made from now on. Signed papers stay as they were signed.</MarginNote>}>
      <PageHead title={school.schoolName} lead="What an emergency needs, and how the school measures and prints." />
      <ActionForm action={changeSchoolAction} check={{ of: 'school-change' }} id="school-form" faultsTitle="Not saved yet. Look at this again">
        <FormHidden name="revision" value={String(school.revision)} />
        <Section id="the-school" title="The school"><div className="stack fields"><SchoolNameFields values={school} /></div></Section>
        <Section id="in-an-emergency" title="In an emergency"><div className="stack fields"><EmergencyFields values={school} /></div></Section>
        <Section id="writing" title="Measuring and printing"><div className="stack fields"><WritingFields values={school} /></div></Section>
        <p className="row"><FormSubmit>Save</FormSubmit></p>
      </ActionForm>
      <Section id="more" title="Also of the school"><ul className="rows"><li><Link href="/school/limits" prefetch={false}>Your own limits for packs</Link></li><li><Link href="/school/export" prefetch={false}>Data of the school: export it, say how long it is kept</Link></li></ul></Section>
      <CertificatePart certificate={certificate} style={school} />
    </Sheet>
  );
}
