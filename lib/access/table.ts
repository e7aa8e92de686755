/**
 * `own`: only what the person made, prepares or is to do. `others`: only what somebody else prepared, so that nobody
 * judges their own work.
 */
export type Rule = 'yes' | 'no' | 'own' | 'others';

/** Of organiser, safety officer, event organiser, helper. */
type Row = readonly [Rule, Rule, Rule, Rule];

/** Who may do what in their own school. In another school nobody may do anything. What is not listed is refused. */
export const TABLE = {
  //                              organiser  officer   event     helper
  'school.read':                  ['yes',    'yes',    'yes',    'yes'],
  'school.change':                ['no',     'yes',    'no',     'no'],
  'school.export':                ['no',     'yes',    'no',     'no'],
  'people.read':                  ['yes',    'yes',    'yes',    'no'],
  'people.invite':                ['no',     'yes',    'no',     'no'],
  'people.change':                ['no',     'yes',    'no',     'no'],
  'log.read':                     ['no',     'yes',    'no',     'no'],

  'place.read':                   ['yes',    'yes',    'yes',    'yes'],
  'place.change':                 ['yes',    'yes',    'yes',    'no'],
  'place.archive':                ['yes',    'yes',    'no',     'no'],

  'pack.read':                    ['yes',    'yes',    'yes',    'yes'],
  'pack.add':                     ['yes',    'yes',    'no',     'no'],
  'pack.change':                  ['yes',    'yes',    'no',     'no'],
  'pack.check':                   ['yes',    'yes',    'yes',    'yes'],
  // Towards caution anybody may: to watch, to isolated, and where the pack lies.
  'pack.isolate':                 ['yes',    'yes',    'yes',    'yes'],
  'pack.say-where':               ['yes',    'yes',    'yes',    'yes'],
  'pack.put-back':                ['yes',    'yes',    'no',     'no'],
  'pack.release':                 ['no',     'yes',    'no',     'no'],
  'pack.retire':                  ['yes',    'yes',    'no',     'no'],
  'pack.hand-over':               ['yes',    'yes',    'no',     'no'],

  'session.read':                 ['yes',    'yes',    'yes',    'yes'],
  'session.log':                  ['yes',    'yes',    'yes',    'yes'],
  'session.change':               ['yes',    'yes',    'own',    'own'],
  'trend.read':                   ['yes',    'yes',    'no',     'no'],

  'assessment.read':              ['yes',    'yes',    'yes',    'no'],
  'assessment.begin':             ['yes',    'yes',    'no',     'no'],
  // An officer who thinks an answer wrong returns it; who writes in it could not judge it.
  'assessment.answer':            ['yes',    'own',    'no',     'no'],
  'assessment.send-questions':    ['yes',    'own',    'no',     'no'],
  'assessment.submit':            ['own',    'own',    'no',     'no'],
  'assessment.take-back':         ['own',    'own',    'no',     'no'],
  'assessment.comment':           ['yes',    'yes',    'no',     'no'],
  'assessment.look':              ['no',     'others', 'no',     'no'],
  'assessment.return':            ['no',     'others', 'no',     'no'],
  'assessment.accept-stop':       ['no',     'others', 'no',     'no'],
  'assessment.sign-as-preparer':  ['own',    'own',    'no',     'no'],
  'assessment.sign-as-officer':   ['no',     'others', 'no',     'no'],
  'assessment.suspend':           ['no',     'yes',    'no',     'no'],
  'assessment.lift-suspension':   ['no',     'yes',    'no',     'no'],
  'assessment.withdraw':          ['no',     'yes',    'no',     'no'],
  'assessment.ask-review':        ['yes',    'yes',    'no',     'no'],
  'assessment.settle-review':     ['no',     'yes',    'no',     'no'],

  'action.read':                  ['yes',    'yes',    'yes',    'yes'],
  'action.add':                   ['yes',    'yes',    'no',     'no'],
  'action.change':                ['yes',    'yes',    'no',     'no'],
  'action.close':                 ['yes',    'yes',    'own',    'own'],

  // Whoever is there records it. Who was hurt is read only by those who have to act on it.
  'incident.record':              ['yes',    'yes',    'yes',    'yes'],
  'incident.read':                ['yes',    'yes',    'own',    'own'],
  'incident.correct':             ['yes',    'yes',    'own',    'own'],
  'incident.follow-up':           ['yes',    'yes',    'no',     'no'],
  'incident.close':               ['no',     'yes',    'no',     'no'],
  'incident.sign':                ['no',     'yes',    'no',     'no'],

  'event.read':                   ['yes',    'yes',    'yes',    'yes'],
  'event.begin':                  ['yes',    'yes',    'yes',    'no'],
  'event.change':                 ['yes',    'own',    'own',    'no'],
  'event.submit':                 ['own',    'own',    'own',    'no'],
  'event.cancel':                 ['own',    'yes',    'own',    'no'],
  'event.return':                 ['no',     'others', 'no',     'no'],
  'event.accept-line':            ['no',     'others', 'no',     'no'],
  'event.sign-as-preparer':       ['own',    'own',    'own',    'no'],
  'event.sign-as-officer':        ['no',     'others', 'no',     'no'],
  'event.withdraw':               ['own',    'yes',    'own',    'no'],

  'document.read':                ['yes',    'yes',    'yes',    'no'],
  'link.share':                   ['yes',    'yes',    'yes',    'no'],
  'link.revoke':                  ['yes',    'yes',    'own',    'no'],
} as const satisfies Readonly<Record<string, Row>>;

export type Action = keyof typeof TABLE;

/** Actions that for some role depend on whose the thing is, so that the role alone cannot decide. */
export type ActionOnCase = { [A in Action]: Extract<(typeof TABLE)[A][number], 'own' | 'others'> extends never ? never : A }[Action];

/** Actions that the role alone decides. */
export type ActionOfRole = Exclude<Action, ActionOnCase>;

/** Returns whether a word is an action of the table. */
export function isAction(word: string): word is Action {
  return Object.hasOwn(TABLE, word);
}
