import type { SchoolScope } from '../scope';
import type { Db } from '../client';

/**
 * Every table of a school, read whole. Left out of a row: the bytes of files, which leave as files, and what is a secret of
 * the installation (sealed keys, the seals of links), which is of no use elsewhere and would open something here.
 */
const TABLES = {
  Site: (db, where) => db.site.findMany({ where }),
  Area: (db, where) => db.area.findMany({ where }),
  Pack: (db, where) => db.pack.findMany({ where }),
  PackPhoto: (db, where) => db.packPhoto.findMany({ where }),
  PackStateChange: (db, where) => db.packStateChange.findMany({ where }),
  PackCheck: (db, where) => db.packCheck.findMany({ where }),
  HandOver: (db, where) => db.handOver.findMany({ where }),
  HandOverPack: (db, where) => db.handOverPack.findMany({ where }),
  Session: (db, where) => db.session.findMany({ where }),
  SessionPack: (db, where) => db.sessionPack.findMany({ where }),
  Assessment: (db, where) => db.assessment.findMany({ where }),
  AssessmentVersion: (db, where) => db.assessmentVersion.findMany({ where }),
  Answer: (db, where) => db.answer.findMany({ where }),
  AnswerEvidence: (db, where) => db.answerEvidence.findMany({ where }),
  AnswerLook: (db, where) => db.answerLook.findMany({ where }),
  Comment: (db, where) => db.comment.findMany({ where }),
  CaretakerLink: (db, where) => db.caretakerLink.findMany({ where, omit: { tokenSeal: true } }),
  Score: (db, where) => db.score.findMany({ where }),
  StopAcceptance: (db, where) => db.stopAcceptance.findMany({ where }),
  Suspension: (db, where) => db.suspension.findMany({ where }),
  ReviewRequest: (db, where) => db.reviewRequest.findMany({ where }),
  Action: (db, where) => db.action.findMany({ where }),
  ActionEvidence: (db, where) => db.actionEvidence.findMany({ where }),
  Incident: (db, where) => db.incident.findMany({ where }),
  IncidentKind: (db, where) => db.incidentKind.findMany({ where }),
  IncidentPack: (db, where) => db.incidentPack.findMany({ where }),
  IncidentPerson: (db, where) => db.incidentPerson.findMany({ where }),
  IncidentPhoto: (db, where) => db.incidentPhoto.findMany({ where }),
  IncidentCorrection: (db, where) => db.incidentCorrection.findMany({ where }),
  IncidentFollowUp: (db, where) => db.incidentFollowUp.findMany({ where }),
  IncidentDraft: (db, where) => db.incidentDraft.findMany({ where }),
  Event: (db, where) => db.event.findMany({ where }),
  EventPack: (db, where) => db.eventPack.findMany({ where }),
  EventAdult: (db, where) => db.eventAdult.findMany({ where }),
  EventAcceptance: (db, where) => db.eventAcceptance.findMany({ where }),
  Document: (db, where) => db.document.findMany({ where }),
  DocumentRevision: (db, where) => db.documentRevision.findMany({ where, omit: { bytes: true } }),
  Signature: (db, where) => db.signature.findMany({ where }),
  SigningAuthority: (db, where) => db.signingAuthority.findMany({ where, omit: { sealedKey: true, certificate: true } }),
  PersonCertificate: (db, where) => db.personCertificate.findMany({ where, omit: { sealedKey: true, certificate: true } }),
  ShareLink: (db, where) => db.shareLink.findMany({ where, omit: { tokenSeal: true } }),
  Invitation: (db, where) => db.invitation.findMany({ where, omit: { tokenSeal: true } }),
  StoredFile: (db, where) => db.storedFile.findMany({ where, omit: { bytes: true } }),
  Membership: (db, where) => db.membership.findMany({ where, include: { person: { select: { name: true, phone: true, createdAt: true, removedAt: true, user: { select: { email: true } } } } } }),
  AuditHead: (db, where) => db.auditHead.findMany({ where }),
  AuditEntry: (db, where) => db.auditEntry.findMany({ where, orderBy: { sequence: 'asc' } }),
} satisfies Readonly<Record<string, (db: Db, where: SchoolScope) => Promise<readonly object[]>>>;

export type SchoolTable = keyof typeof TABLES;

/** The names of the tables, as the models have them. */
export const SCHOOL_TABLES = Object.keys(TABLES) as readonly SchoolTable[];

/** Reads one table of a school. */
export function readTable(db: Db, scope: SchoolScope, table: SchoolTable): Promise<readonly object[]> {
  return TABLES[table](db, scope);
}

/** Reads the row of the school itself. */
export function readSchoolRow(db: Db, { schoolId }: SchoolScope): Promise<object> {
  return db.school.findUniqueOrThrow({ where: { id: schoolId } });
}
