import type { PackVerdict, VerdictWords } from '@/lib/content/model';
import type { TemperatureUnit } from '@/lib/packs/checks/check-answers';
import { checkInForce } from '@/lib/packs/checks/check-age';
import type { CheckRecord } from '@/lib/packs/checks/check-record';
import { signWords, wordsOfVerdict } from '@/lib/packs/checks/verdict-words';
import { mustBeIsolatedNow, type PackHistory, placeOfIsolated, SETTLED_PLACES } from '@/lib/packs/pack-history';
import { blockedUses, blockedWords } from '@/lib/packs/states/blocked-uses';
import { stateWords } from '@/lib/packs/states/pack-states';
import type { SchoolPackLimits } from '@/lib/packs/school-rules';
import { type DateStyle, momentWords } from '@/lib/wording/dates';

interface VerdictPartProps {
  readonly history: PackHistory;
  readonly limits: SchoolPackLimits;
  readonly now: Date;
  readonly unit: TemperatureUnit;
  readonly style: DateStyle;
  readonly officerPhone: string | null;
}

/** What is to be done with the pack: the state it is in, else the verdict of its last check, with signs and what they stop. */
export function VerdictPart({ history, limits, now, unit, style, officerPhone }: VerdictPartProps) {
  const { pack, checks } = history;
  const last = checks[0] ?? null;
  const verdict = verdictShown(history);
  const presses = mustBeIsolatedNow(history) || verdict === 'leave';
  const words = verdict === null ? null : wordsOfVerdict(limits, verdict);
  const counted = checkInForce(limits, last, now);
  const tooOld = last !== null && counted === null && isUsed(pack);
  const blocked = blockedUses(limits, pack, counted);
  const order = blockedWords(blocked.uses);
  return (
    <section className={presses ? 'verdict now' : 'verdict'} aria-labelledby="verdict">
      <h2 className="word" id="verdict">{tooOld ? 'Check it again' : titleOf(history, words)}</h2>
      {order === null ? null : <p className="lead"><strong>{order}:</strong> {tooOld ? `the last check is older than the ${limits.checkDays} days your school lets it count` : blocked.why}.</p>}
      {words === null || tooOld ? null : <p>{words.words}</p>}
      {presses && officerPhone !== null ? <p>Safety officer: <strong>{officerPhone}</strong></p> : null}
      {last === null ? null : <Signs check={last} limits={limits} unit={unit} style={style} />}
    </section>
  );
}

/** Only of a pack that is used the age of its check matters. */
function isUsed({ state }: PackHistory['pack']): boolean {
  return state === 'in-use' || state === 'watch';
}

/** Whose words are shown. Of an isolated pack those that tell what to do, until it is where it should be. */
function verdictShown(history: PackHistory): PackVerdict | null {
  const { pack, checks } = history;
  const last = checks[0]?.result.verdict ?? null;
  if (pack.state === 'isolated') return isSettled(history) ? null : last === 'leave' ? 'leave' : 'isolate';
  if (pack.state === 'retired') return 'retire';
  return pack.state === 'handed-over' ? null : last;
}

function isSettled(history: PackHistory): boolean {
  const place = placeOfIsolated(history)?.placeNow ?? null;
  return place !== null && SETTLED_PLACES.includes(place);
}

function titleOf(history: PackHistory, words: VerdictWords | null): string {
  const { pack, checks } = history;
  if (mustBeIsolatedNow(history)) return words?.verdict === 'leave' ? words.title : 'Isolate now';
  if (pack.state === 'isolated' || pack.state === 'retired' || pack.state === 'handed-over') return stateWords(pack.state).replace(/^./u, (letter) => letter.toUpperCase());
  return checks.length === 0 ? 'Not checked yet' : (words?.title ?? 'Not measured');
}

function Signs({ check, limits, unit, style }: { readonly check: CheckRecord; readonly limits: SchoolPackLimits; readonly unit: TemperatureUnit; readonly style: DateStyle }) {
  const { fired, missing, incomplete } = check.result;
  const reasons = missing.flatMap(({ measure, why }) => (why === null ? [] : [{ measure, why }]));
  return (
    <>
      <p className="small muted">Last check {momentWords(check.at, style)}, by {check.byName}</p>
      {fired.length === 0 ? null : <ul>{fired.map((rule) => <li key={rule.id}>{signWords(rule, limits, unit)}</li>)}</ul>}
      {incomplete === null && reasons.length === 0 ? null : (
        <details className="alt"><summary>What this check does not say</summary>
          {incomplete === null ? null : <p>{incomplete}</p>}
          <ul>{reasons.map(({ measure, why }) => <li key={measure}>{askOf(measure, limits)} {why}</li>)}</ul>
        </details>
      )}
    </>
  );
}

function askOf(measure: string, limits: SchoolPackLimits): string {
  return limits.check?.measures.find(({ id }) => id === measure)?.ask ?? measure;
}
