import { describe, expect, it } from 'vitest';
import { can, mayEver, type Case } from '@/lib/access/can';
import { isRole, ROLES, type Role } from '@/lib/access/roles';
import { isAction, TABLE, type Action, type ActionOfRole, type ActionOnCase } from '@/lib/access/table';

const ACTIONS = Object.keys(TABLE).filter(isAction);
const ME = { schoolId: 's1', personId: 'me' };
const mine: Case = { actor: ME, on: { schoolId: 's1', byId: 'me' } };
const another: Case = { actor: ME, on: { schoolId: 's1', byId: 'somebody else' } };
const nobodys: Case = { actor: ME, on: { schoolId: 's1', byId: null } };
const otherSchools = [null, 'me', 'somebody else'].map((byId): Case => ({ actor: ME, on: { schoolId: 's2', byId } }));

/** What each role may not do at all, written down a second time: a change of the table is made twice, or not at all. */
const NEVER: Readonly<Record<Role, string>> = {
  'organiser':
    'school.change school.export people.invite people.change log.read pack.release assessment.look assessment.return assessment.accept-stop '
    + 'assessment.sign-as-officer assessment.suspend assessment.lift-suspension assessment.withdraw assessment.settle-review '
    + 'incident.close incident.sign event.return event.accept-line event.sign-as-officer',
  'safety-officer': '',
  'event-organiser':
    'school.change school.export people.invite people.change log.read place.archive pack.add pack.change pack.put-back pack.release pack.retire '
    + 'pack.hand-over trend.read assessment.begin assessment.answer assessment.send-questions assessment.submit assessment.take-back '
    + 'assessment.comment assessment.look assessment.return assessment.accept-stop assessment.sign-as-preparer assessment.sign-as-officer '
    + 'assessment.suspend assessment.lift-suspension assessment.withdraw assessment.ask-review assessment.settle-review action.add '
    + 'action.change incident.follow-up incident.close incident.sign event.return event.accept-line event.sign-as-officer',
  'helper':
    'school.change school.export people.read people.invite people.change log.read place.change place.archive pack.add pack.change pack.put-back '
    + 'pack.release pack.retire pack.hand-over trend.read assessment.read assessment.begin assessment.answer assessment.send-questions '
    + 'assessment.submit assessment.take-back assessment.comment assessment.look assessment.return assessment.accept-stop '
    + 'assessment.sign-as-preparer assessment.sign-as-officer assessment.suspend assessment.lift-suspension assessment.withdraw '
    + 'assessment.ask-review assessment.settle-review action.add action.change incident.follow-up incident.close incident.sign event.begin '
    + 'event.change event.submit event.cancel event.return event.accept-line event.sign-as-preparer event.sign-as-officer event.withdraw '
    + 'document.read link.share link.revoke',
};

/** What each role may do with its own only, and with others' only. */
const OWN: Readonly<Record<Role, string>> = {
  'organiser': 'assessment.submit assessment.take-back assessment.sign-as-preparer event.submit event.cancel event.sign-as-preparer event.withdraw',
  'safety-officer': 'assessment.answer assessment.send-questions assessment.submit assessment.take-back assessment.sign-as-preparer event.change event.submit event.sign-as-preparer',
  'event-organiser': 'session.change action.close incident.read incident.correct event.change event.submit event.cancel event.sign-as-preparer event.withdraw link.revoke',
  'helper': 'session.change action.close incident.read incident.correct',
};
const OTHERS: Readonly<Record<Role, string>> = {
  'organiser': '',
  'safety-officer': 'assessment.look assessment.return assessment.accept-stop assessment.sign-as-officer event.return event.accept-line event.sign-as-officer',
  'event-organiser': '',
  'helper': '',
};

const listed = (words: string) => words.split(' ').filter((word) => word !== '').sort();
const asked = (role: string, action: Action, about: Case) => can(role, action as ActionOnCase, about);
const allowed = (role: Role, about: Case) => ACTIONS.filter((action) => asked(role, action, about));

describe.each(ROLES)('the %s', (role) => {
  const unconditional = ACTIONS.filter((action) => ![...listed(NEVER[role]), ...listed(OWN[role]), ...listed(OTHERS[role])].includes(action));

  it('may never do what is not theirs', () => {
    expect(ACTIONS.filter((action) => !mayEver(role, action)).sort()).toEqual(listed(NEVER[role]));
  });

  it('may do the rest, some of it only with their own and some only with what others prepared', () => {
    expect(allowed(role, mine).sort()).toEqual([...unconditional, ...listed(OWN[role])].sort());
    expect(allowed(role, another).sort()).toEqual([...unconditional, ...listed(OTHERS[role])].sort());
    expect(allowed(role, nobodys).sort()).toEqual([...unconditional].sort());
  });

  it('may do nothing in another school', () => {
    for (const about of otherSchools) expect(allowed(role, about)).toEqual([]);
  });

  it('never signs the same paper both as preparer and as officer', () => {
    for (const about of [mine, another, nobodys]) {
      expect(can(role, 'assessment.sign-as-preparer', about) && can(role, 'assessment.sign-as-officer', about)).toBe(false);
      expect(can(role, 'event.sign-as-preparer', about) && can(role, 'event.sign-as-officer', about)).toBe(false);
    }
  });

  it('is refused where the table asks whose it is and nobody says', () => {
    const conditional = [...listed(OWN[role]), ...listed(OTHERS[role])].filter(isAction);
    expect(conditional.filter((action) => can(role, action as ActionOfRole))).toEqual([]);
  });
});

describe('the table', () => {
  it.each(['', 'officer', 'Safety-officer', 'constructor'])('refuses the unknown role "%s" everything', (role) => {
    expect(isRole(role)).toBe(false);
    expect(ACTIONS.filter((action) => mayEver(role, action) || asked(role, action, mine))).toEqual([]);
  });

  it.each(['pack.burn', 'toString', '__proto__'])('refuses the unknown action "%s" to everybody', (action) => {
    expect(isAction(action)).toBe(false);
    expect(ROLES.filter((role) => mayEver(role, action as Action) || asked(role, action as Action, mine))).toEqual([]);
  });
});
