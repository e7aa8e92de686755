import Link from 'next/link';
import { KeepEmergency } from '@/app/_components/keep-emergency';
import { fillGuidance, guidanceWords } from '@/lib/content/fill-guidance';
import { guidance2 } from '@/lib/content/guidance-2';
import { guidanceTogether } from '@/lib/content/guidance-together';
import { emergencyHere } from '@/lib/server/emergency/current-place';
import { EmergencySteps } from './emergency-steps';
import { PlaceFoot } from './place-foot';
import { WayList } from './way-list';
import type { Way } from './ways';

/** One guidance text, full-screen: what to do first, everything else after it. Needs no script and no account. */
export async function EmergencyScreen({ way, at }: { readonly way: Way; readonly at: string | undefined }) {
  const { place, isSignedIn } = await emergencyHere(at ?? null);
  const [text] = guidanceTogether(guidance2, [way.guidance]);
  if (text === undefined) throw new Error(`the guidance has no text ${way.guidance}`);
  const words = guidanceWords(guidance2.fields, place?.values ?? {});
  const filled = fillGuidance(text, words);
  return (
    <div className="alarm">
      <main className="alarm-in" id="main" tabIndex={-1}>
        <header><a className="leave" href={isSignedIn ? '/today' : '/'}>Close</a><span>{place === null ? '' : place.siteName ?? place.schoolName}</span></header>
        <h1>{text.title}</h1>
        <EmergencySteps text={text} filled={filled} words={words} />
        {way.guidance === 'recording' ? <p className="to-form"><Link href="/incidents/new" prefetch={false}>Write down what happened</Link></p> : null}
        <WayList here={way} text={text} query={place === null || place.siteId === null ? '' : `?at=${encodeURIComponent(place.siteId)}`} />
        <PlaceFoot path={way.path} place={place} confirm={text.confirm} />
      </main>
      <KeepEmergency anew={false} />
    </div>
  );
}
