import type { Action } from '@/lib/access/table';

/**
 * Who a page, a route or an action is for. `everyone`: without an account. `signed in`: whoever works in a school, for
 * what belongs to the person or to all. An action of lib/access: those whose role may do it in some case.
 */
export type Audience = 'everyone' | 'signed in' | Action;

/** Every page and route by its file, below app/. What is not listed fails tests/unit/access/routes.test.ts. */
export const ROUTES: Readonly<Record<string, Audience>> = {
  'page.tsx': 'everyone',
  'try/page.tsx': 'everyone',
  'method/page.tsx': 'everyone',
  'method/guidance/[id]/page.tsx': 'everyone',
  'components/page.tsx': 'everyone',
  'verify/page.tsx': 'everyone',
  'verify/certificate/[file]/route.ts': 'everyone',
  'emergency/page.tsx': 'everyone',
  'emergency/[way]/page.tsx': 'everyone',
  'api/health/route.ts': 'everyone',

  '(door)/sign-in/page.tsx': 'everyone',
  '(door)/begin/page.tsx': 'everyone',
  '(door)/invitation/[token]/page.tsx': 'everyone',
  '(door)/new-password/[token]/page.tsx': 'everyone',

  '(school)/today/page.tsx': 'school.read',
  '(school)/account/page.tsx': 'signed in',
  '(school)/school/page.tsx': 'school.read',
  '(school)/people/page.tsx': 'people.read',
  '(school)/people/[personId]/page.tsx': 'people.change',

  '(school)/incidents/page.tsx': 'incident.read',
  '(school)/incidents/new/page.tsx': 'incident.record',
  '(school)/incidents/export/route.ts': 'incident.read',
  '(school)/incidents/[incidentId]/page.tsx': 'incident.read',
  '(school)/incidents/[incidentId]/correct/[field]/page.tsx': 'incident.correct',
  '(school)/incidents/[incidentId]/photos/[photoId]/route.ts': 'incident.read',

  '(school)/assessments/[versionId]/result/page.tsx': 'assessment.read',
  '(school)/assessments/[versionId]/result/[riskId]/page.tsx': 'assessment.read',
  '(school)/assessments/[versionId]/actions/new/page.tsx': 'action.add',
  '(school)/assessments/[versionId]/hand-over/page.tsx': 'assessment.submit',
  '(school)/assessments/[versionId]/review/page.tsx': 'assessment.read',
  '(school)/assessments/[versionId]/sign/page.tsx': 'assessment.sign-as-officer',
  '(school)/assessments/[versionId]/suspend/page.tsx': 'assessment.suspend',
  '(school)/assessments/[versionId]/paper/page.tsx': 'document.read',
  '(school)/assessments/[versionId]/paper.pdf/route.ts': 'document.read',
  '(school)/actions/page.tsx': 'action.read',
  '(school)/actions/list.csv/route.ts': 'action.read',
  '(school)/actions/[actionId]/page.tsx': 'action.read',

  '(school)/assessments/[versionId]/caretaker/page.tsx': 'assessment.send-questions',
  '(school)/assessments/[versionId]/document/route.ts': 'assessment.read',
  '(school)/assessments/[versionId]/known/page.tsx': 'assessment.read',
  '(school)/assessments/[versionId]/page.tsx': 'assessment.read',
  '(school)/assessments/[versionId]/scope/page.tsx': 'assessment.read',
  '(school)/assessments/[versionId]/walk/[pageId]/page.tsx': 'assessment.read',
  '(school)/assessments/[versionId]/walk/page.tsx': 'assessment.read',
  '(school)/assessments/import/page.tsx': 'assessment.begin',
  '(school)/assessments/list.csv/route.ts': 'assessment.read',
  '(school)/assessments/new/page.tsx': 'assessment.begin',
  '(school)/assessments/page.tsx': 'assessment.read',

  '(school)/packs/[packId]/check/page.tsx': 'pack.check',
  '(school)/packs/[packId]/edit/page.tsx': 'pack.change',
  '(school)/packs/[packId]/page.tsx': 'pack.read',
  '(school)/packs/export/route.ts': 'pack.read',
  '(school)/packs/import/page.tsx': 'pack.add',
  '(school)/packs/labels/page.tsx': 'pack.read',
  '(school)/packs/new/page.tsx': 'pack.add',
  '(school)/packs/page.tsx': 'pack.read',

  '(school)/places/[siteId]/areas/[areaId]/page.tsx': 'place.change',
  '(school)/places/[siteId]/areas/new/page.tsx': 'place.change',
  '(school)/places/[siteId]/edit/page.tsx': 'place.change',
  '(school)/places/[siteId]/page.tsx': 'place.read',
  '(school)/places/export/route.ts': 'place.read',
  '(school)/places/new/page.tsx': 'place.change',
  '(school)/places/page.tsx': 'place.read',

  'caretaker/[token]/page.tsx': 'everyone',
};

/** Every function a browser can call, by its file and name. */
export const ACTIONS: Readonly<Record<string, Audience>> = {
  '(door)/sign-in/actions.ts signInAction': 'everyone',
  '(door)/begin/actions.ts beginAction': 'everyone',
  '(door)/invitation/[token]/actions.ts acceptAction': 'everyone',
  '(door)/new-password/[token]/actions.ts newPasswordAction': 'everyone',

  'verify/actions.ts checkFileAction': 'everyone',
  'verify/actions.ts checkNumberAction': 'everyone',

  '(school)/account/actions.ts changePasswordAction': 'signed in',
  // Signing out of nothing changes nothing.
  '(school)/account/actions.ts signOutHere': 'everyone',
  '(school)/account/actions.ts signOutEverywhere': 'signed in',
  '(school)/school/actions.ts changeSchoolAction': 'school.change',
  '(school)/people/actions.ts inviteAction': 'people.invite',
  '(school)/people/actions.ts revokeInvitationAction': 'people.invite',
  '(school)/people/actions.ts changeRoleAction': 'people.change',
  '(school)/people/actions.ts closeAccountAction': 'people.change',
  '(school)/people/actions.ts reopenAccountAction': 'people.change',
  '(school)/people/[personId]/actions.ts passwordLinkAction': 'people.change',

  '(school)/incidents/new/actions.ts saveIncidentAction': 'incident.record',
  '(school)/incidents/new/actions.ts dropDraftAction': 'incident.record',
  '(school)/incidents/[incidentId]/actions.ts correctAction': 'incident.correct',
  '(school)/incidents/[incidentId]/actions.ts addPhotosAction': 'incident.correct',
  '(school)/incidents/[incidentId]/actions.ts removePhotoAction': 'incident.close',
  '(school)/incidents/[incidentId]/actions.ts placePackAction': 'pack.say-where',
  '(school)/incidents/[incidentId]/actions.ts followUpAction': 'incident.follow-up',
  '(school)/incidents/[incidentId]/actions.ts chooseRiskAction': 'incident.follow-up',
  '(school)/incidents/[incidentId]/actions.ts correctiveActionAction': 'incident.follow-up',
  '(school)/incidents/[incidentId]/actions.ts closeAction': 'incident.close',
  '(school)/incidents/[incidentId]/actions.ts reopenAction': 'incident.close',

  '(school)/assessments/[versionId]/actions/new/actions.ts addActionAction': 'action.add',
  '(school)/assessments/[versionId]/hand-over/actions.ts handOverAction': 'assessment.submit',
  '(school)/assessments/[versionId]/sign/actions.ts signOffAction': 'assessment.sign-as-officer',
  '(school)/assessments/[versionId]/review/actions.ts commentAction': 'assessment.comment',
  '(school)/assessments/[versionId]/review/actions.ts settleCommentAction': 'assessment.comment',
  '(school)/assessments/[versionId]/review/actions.ts takeBackCommentAction': 'assessment.comment',
  '(school)/assessments/[versionId]/review/actions.ts lookAction': 'assessment.look',
  '(school)/assessments/[versionId]/review/actions.ts returnAction': 'assessment.return',
  '(school)/assessments/[versionId]/review/actions.ts acceptStopAction': 'assessment.accept-stop',
  '(school)/assessments/[versionId]/suspend/actions.ts suspendAction': 'assessment.suspend',
  '(school)/assessments/[versionId]/suspend/actions.ts liftAction': 'assessment.lift-suspension',
  '(school)/assessments/[versionId]/suspend/actions.ts settleReviewAction': 'assessment.settle-review',
  '(school)/actions/[actionId]/actions.ts changeActionAction': 'action.change',
  '(school)/actions/[actionId]/actions.ts doneAction': 'action.close',
  '(school)/actions/[actionId]/actions.ts dropAction': 'action.close',
  '(school)/actions/[actionId]/actions.ts reopenActionAction': 'action.close',

  '(school)/assessments/[versionId]/caretaker/actions.ts sendQuestionsAction': 'assessment.send-questions',
  '(school)/assessments/[versionId]/caretaker/actions.ts takeLinkBackAction': 'assessment.send-questions',
  '(school)/assessments/[versionId]/known/actions.ts confirmKnownAction': 'assessment.answer',
  '(school)/assessments/[versionId]/scope/actions.ts saveScopeAction': 'assessment.answer',
  '(school)/assessments/[versionId]/scope/actions.ts saveSettingsAction': 'assessment.answer',
  '(school)/assessments/[versionId]/walk/[pageId]/actions.ts savePageAction': 'assessment.answer',
  '(school)/assessments/import/actions.ts importAction': 'assessment.begin',
  '(school)/assessments/new/actions.ts beginAction': 'assessment.begin',
  '(school)/assessments/new/actions.ts beginNextAction': 'assessment.begin',

  '(school)/packs/[packId]/actions.ts copyPackAction': 'pack.add',
  '(school)/packs/[packId]/actions.ts changePackAction': 'pack.change',
  '(school)/packs/[packId]/actions.ts movePackAction': 'pack.isolate',
  '(school)/packs/[packId]/actions.ts sayWhereAction': 'pack.say-where',
  '(school)/packs/[packId]/actions.ts checkPackAction': 'pack.check',
  '(school)/packs/import/actions.ts importPacksAction': 'pack.add',
  '(school)/packs/new/actions.ts addPackAction': 'pack.add',

  '(school)/places/actions.ts addSiteAction': 'place.change',
  '(school)/places/actions.ts changeSiteAction': 'place.change',
  '(school)/places/actions.ts addAreaAction': 'place.change',
  '(school)/places/actions.ts changeAreaAction': 'place.change',
  '(school)/places/actions.ts putAwaySiteAction': 'place.archive',
  '(school)/places/actions.ts putAwayAreaAction': 'place.archive',

  'caretaker/[token]/actions.ts answerAsCaretakerAction': 'everyone',
};
