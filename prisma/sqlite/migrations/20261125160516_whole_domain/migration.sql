-- CreateTable
CREATE TABLE "Action" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "schoolId" TEXT NOT NULL,
    "versionId" TEXT,
    "incidentId" TEXT,
    "controlId" TEXT,
    "stopId" TEXT,
    "riskId" TEXT,
    "questionId" TEXT,
    "title" TEXT NOT NULL,
    "details" TEXT,
    "ownerId" TEXT,
    "ownerName" TEXT NOT NULL,
    "dueOn" TEXT NOT NULL,
    "state" TEXT NOT NULL,
    "byId" TEXT NOT NULL,
    "createdAt" DATETIME NOT NULL,
    "closedById" TEXT,
    "closedAt" DATETIME,
    "closedNote" TEXT,
    "revision" INTEGER NOT NULL DEFAULT 1,
    CONSTRAINT "Action_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Action_schoolId_versionId_fkey" FOREIGN KEY ("schoolId", "versionId") REFERENCES "AssessmentVersion" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Action_schoolId_incidentId_fkey" FOREIGN KEY ("schoolId", "incidentId") REFERENCES "Incident" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Action_schoolId_ownerId_fkey" FOREIGN KEY ("schoolId", "ownerId") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Action_schoolId_byId_fkey" FOREIGN KEY ("schoolId", "byId") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Action_schoolId_closedById_fkey" FOREIGN KEY ("schoolId", "closedById") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "ActionEvidence" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "schoolId" TEXT NOT NULL,
    "actionId" TEXT NOT NULL,
    "fileId" TEXT NOT NULL,
    "caption" TEXT,
    "byId" TEXT NOT NULL,
    "at" DATETIME NOT NULL,
    CONSTRAINT "ActionEvidence_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "ActionEvidence_schoolId_actionId_fkey" FOREIGN KEY ("schoolId", "actionId") REFERENCES "Action" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "ActionEvidence_schoolId_fileId_fkey" FOREIGN KEY ("schoolId", "fileId") REFERENCES "StoredFile" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "ActionEvidence_schoolId_byId_fkey" FOREIGN KEY ("schoolId", "byId") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Assessment" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "schoolId" TEXT NOT NULL,
    "siteId" TEXT NOT NULL,
    "title" TEXT NOT NULL,
    "createdAt" DATETIME NOT NULL,
    CONSTRAINT "Assessment_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Assessment_schoolId_siteId_fkey" FOREIGN KEY ("schoolId", "siteId") REFERENCES "Site" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "AssessmentVersion" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "schoolId" TEXT NOT NULL,
    "assessmentId" TEXT NOT NULL,
    "number" INTEGER NOT NULL,
    "state" TEXT NOT NULL,
    "contentVersion" TEXT NOT NULL,
    "season" TEXT,
    "basedOnId" TEXT,
    "preparedById" TEXT NOT NULL,
    "preparedByName" TEXT NOT NULL,
    "visited" BOOLEAN,
    "visitedOn" TEXT,
    "scopeJson" TEXT NOT NULL DEFAULT '{}',
    "settingsJson" TEXT NOT NULL DEFAULT '{}',
    "createdAt" DATETIME NOT NULL,
    "submittedAt" DATETIME,
    "returnedAt" DATETIME,
    "signedAt" DATETIME,
    "reviewBy" TEXT,
    "supersededAt" DATETIME,
    "withdrawnAt" DATETIME,
    "withdrawnReason" TEXT,
    "revision" INTEGER NOT NULL DEFAULT 1,
    CONSTRAINT "AssessmentVersion_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "AssessmentVersion_schoolId_assessmentId_fkey" FOREIGN KEY ("schoolId", "assessmentId") REFERENCES "Assessment" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "AssessmentVersion_schoolId_basedOnId_fkey" FOREIGN KEY ("schoolId", "basedOnId") REFERENCES "AssessmentVersion" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "AssessmentVersion_schoolId_preparedById_fkey" FOREIGN KEY ("schoolId", "preparedById") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Answer" (
    "schoolId" TEXT NOT NULL,
    "versionId" TEXT NOT NULL,
    "questionId" TEXT NOT NULL,
    "valueJson" TEXT,
    "notSureJson" TEXT,
    "note" TEXT,
    "origin" TEXT NOT NULL,
    "waitsFor" TEXT,
    "answeredById" TEXT,
    "answeredByName" TEXT NOT NULL,
    "answeredAt" DATETIME NOT NULL,
    "revision" INTEGER NOT NULL DEFAULT 1,

    PRIMARY KEY ("versionId", "questionId"),
    CONSTRAINT "Answer_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Answer_schoolId_versionId_fkey" FOREIGN KEY ("schoolId", "versionId") REFERENCES "AssessmentVersion" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Answer_schoolId_answeredById_fkey" FOREIGN KEY ("schoolId", "answeredById") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "AnswerEvidence" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "schoolId" TEXT NOT NULL,
    "versionId" TEXT NOT NULL,
    "questionId" TEXT NOT NULL,
    "fileId" TEXT NOT NULL,
    "caption" TEXT,
    "byId" TEXT,
    "byName" TEXT NOT NULL,
    "at" DATETIME NOT NULL,
    "removedAt" DATETIME,
    CONSTRAINT "AnswerEvidence_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "AnswerEvidence_schoolId_versionId_fkey" FOREIGN KEY ("schoolId", "versionId") REFERENCES "AssessmentVersion" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "AnswerEvidence_schoolId_fileId_fkey" FOREIGN KEY ("schoolId", "fileId") REFERENCES "StoredFile" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "AnswerEvidence_schoolId_byId_fkey" FOREIGN KEY ("schoolId", "byId") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "AnswerLook" (
    "schoolId" TEXT NOT NULL,
    "versionId" TEXT NOT NULL,
    "questionId" TEXT NOT NULL,
    "byId" TEXT NOT NULL,
    "answerRevision" INTEGER NOT NULL,
    "at" DATETIME NOT NULL,

    PRIMARY KEY ("versionId", "questionId", "byId"),
    CONSTRAINT "AnswerLook_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "AnswerLook_schoolId_versionId_fkey" FOREIGN KEY ("schoolId", "versionId") REFERENCES "AssessmentVersion" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "AnswerLook_schoolId_byId_fkey" FOREIGN KEY ("schoolId", "byId") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Comment" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "schoolId" TEXT NOT NULL,
    "versionId" TEXT NOT NULL,
    "questionId" TEXT,
    "riskId" TEXT,
    "replyToId" TEXT,
    "text" TEXT NOT NULL,
    "byId" TEXT NOT NULL,
    "byName" TEXT NOT NULL,
    "at" DATETIME NOT NULL,
    "settledById" TEXT,
    "settledAt" DATETIME,
    "withdrawnAt" DATETIME,
    CONSTRAINT "Comment_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Comment_schoolId_versionId_fkey" FOREIGN KEY ("schoolId", "versionId") REFERENCES "AssessmentVersion" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Comment_schoolId_replyToId_fkey" FOREIGN KEY ("schoolId", "replyToId") REFERENCES "Comment" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Comment_schoolId_byId_fkey" FOREIGN KEY ("schoolId", "byId") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Comment_schoolId_settledById_fkey" FOREIGN KEY ("schoolId", "settledById") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "CaretakerLink" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "schoolId" TEXT NOT NULL,
    "versionId" TEXT NOT NULL,
    "tokenSeal" TEXT NOT NULL,
    "forWhom" TEXT NOT NULL,
    "questionIdsJson" TEXT NOT NULL,
    "byId" TEXT NOT NULL,
    "createdAt" DATETIME NOT NULL,
    "expiresAt" DATETIME NOT NULL,
    "openedCount" INTEGER NOT NULL DEFAULT 0,
    "lastOpenedAt" DATETIME,
    "answeredAt" DATETIME,
    "answeredByName" TEXT,
    "revokedById" TEXT,
    "revokedAt" DATETIME,
    CONSTRAINT "CaretakerLink_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "CaretakerLink_schoolId_versionId_fkey" FOREIGN KEY ("schoolId", "versionId") REFERENCES "AssessmentVersion" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "CaretakerLink_schoolId_byId_fkey" FOREIGN KEY ("schoolId", "byId") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "CaretakerLink_schoolId_revokedById_fkey" FOREIGN KEY ("schoolId", "revokedById") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "AuditHead" (
    "schoolId" TEXT NOT NULL PRIMARY KEY,
    "sequence" INTEGER NOT NULL,
    "hash" TEXT NOT NULL,
    CONSTRAINT "AuditHead_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "AuditEntry" (
    "schoolId" TEXT NOT NULL,
    "sequence" INTEGER NOT NULL,
    "at" DATETIME NOT NULL,
    "kind" TEXT NOT NULL,
    "actorId" TEXT,
    "actorName" TEXT NOT NULL,
    "subjectId" TEXT NOT NULL,
    "dataJson" TEXT NOT NULL,
    "previousHash" TEXT NOT NULL,
    "hash" TEXT NOT NULL,

    PRIMARY KEY ("schoolId", "sequence"),
    CONSTRAINT "AuditEntry_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "AuditEntry_schoolId_actorId_fkey" FOREIGN KEY ("schoolId", "actorId") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "User" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "name" TEXT NOT NULL,
    "email" TEXT NOT NULL,
    "emailVerified" BOOLEAN NOT NULL DEFAULT false,
    "image" TEXT,
    "createdAt" DATETIME NOT NULL,
    "updatedAt" DATETIME NOT NULL
);

-- CreateTable
CREATE TABLE "SignInSession" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "token" TEXT NOT NULL,
    "expiresAt" DATETIME NOT NULL,
    "ipAddress" TEXT,
    "userAgent" TEXT,
    "userId" TEXT NOT NULL,
    "createdAt" DATETIME NOT NULL,
    "updatedAt" DATETIME NOT NULL,
    CONSTRAINT "SignInSession_userId_fkey" FOREIGN KEY ("userId") REFERENCES "User" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "SignInMethod" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "accountId" TEXT NOT NULL,
    "providerId" TEXT NOT NULL,
    "userId" TEXT NOT NULL,
    "password" TEXT,
    "accessToken" TEXT,
    "refreshToken" TEXT,
    "idToken" TEXT,
    "accessTokenExpiresAt" DATETIME,
    "refreshTokenExpiresAt" DATETIME,
    "scope" TEXT,
    "createdAt" DATETIME NOT NULL,
    "updatedAt" DATETIME NOT NULL,
    CONSTRAINT "SignInMethod_userId_fkey" FOREIGN KEY ("userId") REFERENCES "User" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "SignInToken" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "identifier" TEXT NOT NULL,
    "value" TEXT NOT NULL,
    "expiresAt" DATETIME NOT NULL,
    "createdAt" DATETIME NOT NULL,
    "updatedAt" DATETIME NOT NULL
);

-- CreateTable
CREATE TABLE "SignInAttempt" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "bucket" TEXT NOT NULL,
    "at" DATETIME NOT NULL
);

-- CreateTable
CREATE TABLE "Document" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "schoolId" TEXT NOT NULL,
    "number" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "title" TEXT NOT NULL,
    "format" TEXT NOT NULL,
    "language" TEXT NOT NULL,
    "fingerprint" TEXT NOT NULL,
    "state" TEXT NOT NULL,
    "versionId" TEXT,
    "scoreId" TEXT,
    "incidentId" TEXT,
    "eventId" TEXT,
    "handOverId" TEXT,
    "createdAt" DATETIME NOT NULL,
    "replacedById" TEXT,
    "replacedAt" DATETIME,
    "withdrawnById" TEXT,
    "withdrawnAt" DATETIME,
    "withdrawnReason" TEXT,
    "revision" INTEGER NOT NULL DEFAULT 1,
    CONSTRAINT "Document_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Document_schoolId_versionId_fkey" FOREIGN KEY ("schoolId", "versionId") REFERENCES "AssessmentVersion" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Document_schoolId_scoreId_fkey" FOREIGN KEY ("schoolId", "scoreId") REFERENCES "Score" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Document_schoolId_incidentId_fkey" FOREIGN KEY ("schoolId", "incidentId") REFERENCES "Incident" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Document_schoolId_eventId_fkey" FOREIGN KEY ("schoolId", "eventId") REFERENCES "Event" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Document_schoolId_handOverId_fkey" FOREIGN KEY ("schoolId", "handOverId") REFERENCES "HandOver" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Document_schoolId_replacedById_fkey" FOREIGN KEY ("schoolId", "replacedById") REFERENCES "Document" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Document_schoolId_withdrawnById_fkey" FOREIGN KEY ("schoolId", "withdrawnById") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "DocumentRevision" (
    "schoolId" TEXT NOT NULL,
    "documentId" TEXT NOT NULL,
    "number" INTEGER NOT NULL,
    "bytes" BLOB NOT NULL,
    "byteCount" INTEGER NOT NULL,
    "sha256" TEXT NOT NULL,
    "createdAt" DATETIME NOT NULL,

    PRIMARY KEY ("documentId", "number"),
    CONSTRAINT "DocumentRevision_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "DocumentRevision_schoolId_documentId_fkey" FOREIGN KEY ("schoolId", "documentId") REFERENCES "Document" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "ShareLink" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "schoolId" TEXT NOT NULL,
    "tokenSeal" TEXT NOT NULL,
    "purpose" TEXT NOT NULL,
    "documentId" TEXT,
    "eventId" TEXT,
    "siteId" TEXT,
    "forWhom" TEXT NOT NULL,
    "byId" TEXT NOT NULL,
    "createdAt" DATETIME NOT NULL,
    "expiresAt" DATETIME NOT NULL,
    "openedCount" INTEGER NOT NULL DEFAULT 0,
    "lastOpenedAt" DATETIME,
    "answeredAt" DATETIME,
    "revokedById" TEXT,
    "revokedAt" DATETIME,
    CONSTRAINT "ShareLink_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "ShareLink_schoolId_documentId_fkey" FOREIGN KEY ("schoolId", "documentId") REFERENCES "Document" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "ShareLink_schoolId_eventId_fkey" FOREIGN KEY ("schoolId", "eventId") REFERENCES "Event" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "ShareLink_schoolId_siteId_fkey" FOREIGN KEY ("schoolId", "siteId") REFERENCES "Site" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "ShareLink_schoolId_byId_fkey" FOREIGN KEY ("schoolId", "byId") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "ShareLink_schoolId_revokedById_fkey" FOREIGN KEY ("schoolId", "revokedById") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Event" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "schoolId" TEXT NOT NULL,
    "siteId" TEXT NOT NULL,
    "title" TEXT NOT NULL,
    "state" TEXT NOT NULL,
    "startsAt" DATETIME NOT NULL,
    "endsAt" DATETIME NOT NULL,
    "teams" INTEGER,
    "people" INTEGER,
    "spectators" INTEGER,
    "versionId" TEXT,
    "scheduleJson" TEXT NOT NULL DEFAULT '[]',
    "detailsJson" TEXT NOT NULL DEFAULT '{}',
    "contentVersion" TEXT NOT NULL,
    "preparedById" TEXT NOT NULL,
    "preparedByName" TEXT NOT NULL,
    "createdAt" DATETIME NOT NULL,
    "submittedAt" DATETIME,
    "signedAt" DATETIME,
    "cancelledAt" DATETIME,
    "cancelledReason" TEXT,
    "copiedFromId" TEXT,
    "revision" INTEGER NOT NULL DEFAULT 1,
    CONSTRAINT "Event_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Event_schoolId_siteId_fkey" FOREIGN KEY ("schoolId", "siteId") REFERENCES "Site" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Event_schoolId_versionId_fkey" FOREIGN KEY ("schoolId", "versionId") REFERENCES "AssessmentVersion" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Event_schoolId_preparedById_fkey" FOREIGN KEY ("schoolId", "preparedById") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Event_schoolId_copiedFromId_fkey" FOREIGN KEY ("schoolId", "copiedFromId") REFERENCES "Event" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "EventPack" (
    "schoolId" TEXT NOT NULL,
    "eventId" TEXT NOT NULL,
    "packId" TEXT NOT NULL,

    PRIMARY KEY ("eventId", "packId"),
    CONSTRAINT "EventPack_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "EventPack_schoolId_eventId_fkey" FOREIGN KEY ("schoolId", "eventId") REFERENCES "Event" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "EventPack_schoolId_packId_fkey" FOREIGN KEY ("schoolId", "packId") REFERENCES "Pack" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "EventAdult" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "schoolId" TEXT NOT NULL,
    "eventId" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "part" TEXT NOT NULL,
    "phone" TEXT,
    CONSTRAINT "EventAdult_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "EventAdult_schoolId_eventId_fkey" FOREIGN KEY ("schoolId", "eventId") REFERENCES "Event" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "EventAcceptance" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "schoolId" TEXT NOT NULL,
    "eventId" TEXT NOT NULL,
    "lineId" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "byId" TEXT NOT NULL,
    "byName" TEXT NOT NULL,
    "at" DATETIME NOT NULL,
    "endedAt" DATETIME,
    CONSTRAINT "EventAcceptance_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "EventAcceptance_schoolId_eventId_fkey" FOREIGN KEY ("schoolId", "eventId") REFERENCES "Event" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "EventAcceptance_schoolId_byId_fkey" FOREIGN KEY ("schoolId", "byId") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "StoredFile" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "schoolId" TEXT NOT NULL,
    "mimeType" TEXT NOT NULL,
    "bytes" BLOB NOT NULL,
    "byteCount" INTEGER NOT NULL,
    "sha256" TEXT NOT NULL,
    "widthPx" INTEGER,
    "heightPx" INTEGER,
    "byId" TEXT,
    "byName" TEXT NOT NULL,
    "createdAt" DATETIME NOT NULL,
    CONSTRAINT "StoredFile_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "StoredFile_schoolId_byId_fkey" FOREIGN KEY ("schoolId", "byId") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Incident" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "schoolId" TEXT NOT NULL,
    "number" INTEGER NOT NULL,
    "clientKey" TEXT NOT NULL,
    "state" TEXT NOT NULL,
    "happenedAt" DATETIME NOT NULL,
    "timeKnown" BOOLEAN NOT NULL,
    "siteId" TEXT,
    "areaId" TEXT,
    "place" TEXT,
    "doing" TEXT,
    "hurt" TEXT NOT NULL,
    "breathed" TEXT NOT NULL,
    "calledJson" TEXT NOT NULL,
    "contactedJson" TEXT NOT NULL DEFAULT '[]',
    "whatHappened" TEXT NOT NULL,
    "firstAid" TEXT,
    "whatWasDone" TEXT,
    "contentVersion" TEXT NOT NULL,
    "byId" TEXT NOT NULL,
    "byName" TEXT NOT NULL,
    "recordedAt" DATETIME NOT NULL,
    "closedById" TEXT,
    "closedAt" DATETIME,
    "closedNote" TEXT,
    "revision" INTEGER NOT NULL DEFAULT 1,
    CONSTRAINT "Incident_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Incident_schoolId_siteId_fkey" FOREIGN KEY ("schoolId", "siteId") REFERENCES "Site" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Incident_schoolId_areaId_fkey" FOREIGN KEY ("schoolId", "areaId") REFERENCES "Area" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Incident_schoolId_byId_fkey" FOREIGN KEY ("schoolId", "byId") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Incident_schoolId_closedById_fkey" FOREIGN KEY ("schoolId", "closedById") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "IncidentKind" (
    "schoolId" TEXT NOT NULL,
    "incidentId" TEXT NOT NULL,
    "kind" TEXT NOT NULL,

    PRIMARY KEY ("incidentId", "kind"),
    CONSTRAINT "IncidentKind_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "IncidentKind_schoolId_incidentId_fkey" FOREIGN KEY ("schoolId", "incidentId") REFERENCES "Incident" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "IncidentPack" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "schoolId" TEXT NOT NULL,
    "incidentId" TEXT NOT NULL,
    "packId" TEXT,
    "label" TEXT NOT NULL,
    "part" TEXT NOT NULL,
    CONSTRAINT "IncidentPack_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "IncidentPack_schoolId_incidentId_fkey" FOREIGN KEY ("schoolId", "incidentId") REFERENCES "Incident" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "IncidentPack_schoolId_packId_fkey" FOREIGN KEY ("schoolId", "packId") REFERENCES "Pack" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "IncidentPerson" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "schoolId" TEXT NOT NULL,
    "incidentId" TEXT NOT NULL,
    "role" TEXT NOT NULL,
    "initials" TEXT,
    "hurt" TEXT NOT NULL,
    "breathed" TEXT NOT NULL,
    "firstAid" TEXT,
    "removedAt" DATETIME,
    CONSTRAINT "IncidentPerson_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "IncidentPerson_schoolId_incidentId_fkey" FOREIGN KEY ("schoolId", "incidentId") REFERENCES "Incident" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "IncidentPhoto" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "schoolId" TEXT NOT NULL,
    "incidentId" TEXT NOT NULL,
    "fileId" TEXT NOT NULL,
    "caption" TEXT,
    "at" DATETIME NOT NULL,
    "removedAt" DATETIME,
    CONSTRAINT "IncidentPhoto_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "IncidentPhoto_schoolId_incidentId_fkey" FOREIGN KEY ("schoolId", "incidentId") REFERENCES "Incident" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "IncidentPhoto_schoolId_fileId_fkey" FOREIGN KEY ("schoolId", "fileId") REFERENCES "StoredFile" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "IncidentCorrection" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "schoolId" TEXT NOT NULL,
    "incidentId" TEXT NOT NULL,
    "number" INTEGER NOT NULL,
    "field" TEXT NOT NULL,
    "beforeJson" TEXT NOT NULL,
    "afterJson" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "byId" TEXT NOT NULL,
    "byName" TEXT NOT NULL,
    "at" DATETIME NOT NULL,
    CONSTRAINT "IncidentCorrection_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "IncidentCorrection_schoolId_incidentId_fkey" FOREIGN KEY ("schoolId", "incidentId") REFERENCES "Incident" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "IncidentCorrection_schoolId_byId_fkey" FOREIGN KEY ("schoolId", "byId") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "IncidentFollowUp" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "schoolId" TEXT NOT NULL,
    "incidentId" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "text" TEXT NOT NULL,
    "byId" TEXT NOT NULL,
    "byName" TEXT NOT NULL,
    "at" DATETIME NOT NULL,
    CONSTRAINT "IncidentFollowUp_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "IncidentFollowUp_schoolId_incidentId_fkey" FOREIGN KEY ("schoolId", "incidentId") REFERENCES "Incident" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "IncidentFollowUp_schoolId_byId_fkey" FOREIGN KEY ("schoolId", "byId") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Pack" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "schoolId" TEXT NOT NULL,
    "label" TEXT NOT NULL,
    "labelKey" TEXT NOT NULL,
    "series" INTEGER NOT NULL,
    "parallel" INTEGER NOT NULL,
    "capacityMah" INTEGER NOT NULL,
    "cRating" REAL,
    "printedWh" REAL,
    "cellType" TEXT NOT NULL,
    "connector" TEXT,
    "maker" TEXT,
    "seller" TEXT,
    "batch" TEXT,
    "secondHand" BOOLEAN,
    "boughtOn" TEXT,
    "firstUsedOn" TEXT,
    "chargesBefore" INTEGER,
    "state" TEXT NOT NULL,
    "stateReason" TEXT,
    "stateSince" DATETIME NOT NULL,
    "siteId" TEXT,
    "areaId" TEXT,
    "place" TEXT,
    "notes" TEXT,
    "createdAt" DATETIME NOT NULL,
    "revision" INTEGER NOT NULL DEFAULT 1,
    CONSTRAINT "Pack_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Pack_schoolId_siteId_fkey" FOREIGN KEY ("schoolId", "siteId") REFERENCES "Site" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Pack_schoolId_areaId_fkey" FOREIGN KEY ("schoolId", "areaId") REFERENCES "Area" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "PackStateChange" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "schoolId" TEXT NOT NULL,
    "packId" TEXT NOT NULL,
    "fromState" TEXT,
    "toState" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "cause" TEXT,
    "placeNow" TEXT,
    "placeNote" TEXT,
    "inSand" BOOLEAN,
    "checkId" TEXT,
    "incidentId" TEXT,
    "byId" TEXT NOT NULL,
    "byName" TEXT NOT NULL,
    "at" DATETIME NOT NULL,
    CONSTRAINT "PackStateChange_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "PackStateChange_schoolId_packId_fkey" FOREIGN KEY ("schoolId", "packId") REFERENCES "Pack" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "PackStateChange_schoolId_checkId_fkey" FOREIGN KEY ("schoolId", "checkId") REFERENCES "PackCheck" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "PackStateChange_schoolId_incidentId_fkey" FOREIGN KEY ("schoolId", "incidentId") REFERENCES "Incident" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "PackStateChange_schoolId_byId_fkey" FOREIGN KEY ("schoolId", "byId") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "PackCheck" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "schoolId" TEXT NOT NULL,
    "packId" TEXT NOT NULL,
    "sessionId" TEXT,
    "purpose" TEXT NOT NULL,
    "measuresJson" TEXT NOT NULL,
    "cellVoltsJson" TEXT NOT NULL DEFAULT '[]',
    "resistanceJson" TEXT NOT NULL DEFAULT '[]',
    "contentVersion" TEXT NOT NULL,
    "verdict" TEXT,
    "resultJson" TEXT NOT NULL,
    "note" TEXT,
    "byId" TEXT NOT NULL,
    "byName" TEXT NOT NULL,
    "at" DATETIME NOT NULL,
    CONSTRAINT "PackCheck_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "PackCheck_schoolId_packId_fkey" FOREIGN KEY ("schoolId", "packId") REFERENCES "Pack" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "PackCheck_schoolId_sessionId_fkey" FOREIGN KEY ("schoolId", "sessionId") REFERENCES "Session" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "PackCheck_schoolId_byId_fkey" FOREIGN KEY ("schoolId", "byId") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "HandOver" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "schoolId" TEXT NOT NULL,
    "collectedBy" TEXT NOT NULL,
    "receiverName" TEXT NOT NULL,
    "receiverPost" TEXT,
    "agreementNote" TEXT,
    "note" TEXT,
    "byId" TEXT NOT NULL,
    "byName" TEXT NOT NULL,
    "at" DATETIME NOT NULL,
    CONSTRAINT "HandOver_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "HandOver_schoolId_byId_fkey" FOREIGN KEY ("schoolId", "byId") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "HandOverPack" (
    "schoolId" TEXT NOT NULL,
    "handOverId" TEXT NOT NULL,
    "packId" TEXT NOT NULL PRIMARY KEY,
    CONSTRAINT "HandOverPack_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "HandOverPack_schoolId_handOverId_fkey" FOREIGN KEY ("schoolId", "handOverId") REFERENCES "HandOver" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "HandOverPack_schoolId_packId_fkey" FOREIGN KEY ("schoolId", "packId") REFERENCES "Pack" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Person" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "userId" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "phone" TEXT,
    "createdAt" DATETIME NOT NULL,
    "removedAt" DATETIME,
    CONSTRAINT "Person_userId_fkey" FOREIGN KEY ("userId") REFERENCES "User" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Membership" (
    "schoolId" TEXT NOT NULL,
    "personId" TEXT NOT NULL,
    "role" TEXT NOT NULL,
    "post" TEXT NOT NULL,
    "employer" TEXT,
    "joinedAt" DATETIME NOT NULL,
    "endedAt" DATETIME,
    "revision" INTEGER NOT NULL DEFAULT 1,

    PRIMARY KEY ("schoolId", "personId"),
    CONSTRAINT "Membership_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Membership_personId_fkey" FOREIGN KEY ("personId") REFERENCES "Person" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Invitation" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "schoolId" TEXT NOT NULL,
    "tokenSeal" TEXT NOT NULL,
    "role" TEXT NOT NULL,
    "forWhom" TEXT NOT NULL,
    "email" TEXT,
    "byId" TEXT NOT NULL,
    "createdAt" DATETIME NOT NULL,
    "expiresAt" DATETIME NOT NULL,
    "usedById" TEXT,
    "usedAt" DATETIME,
    "revokedById" TEXT,
    "revokedAt" DATETIME,
    CONSTRAINT "Invitation_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Invitation_schoolId_byId_fkey" FOREIGN KEY ("schoolId", "byId") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Invitation_schoolId_usedById_fkey" FOREIGN KEY ("schoolId", "usedById") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Invitation_schoolId_revokedById_fkey" FOREIGN KEY ("schoolId", "revokedById") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Site" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "schoolId" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "address" TEXT NOT NULL,
    "emergencyNumber" TEXT,
    "meetingPlace" TEXT,
    "secondMeetingPlace" TEXT,
    "keyHolder" TEXT,
    "keyHolderPhone" TEXT,
    "notes" TEXT,
    "createdAt" DATETIME NOT NULL,
    "archivedAt" DATETIME,
    "revision" INTEGER NOT NULL DEFAULT 1,
    CONSTRAINT "Site_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Area" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "schoolId" TEXT NOT NULL,
    "siteId" TEXT NOT NULL,
    "use" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "outdoors" BOOLEAN NOT NULL DEFAULT false,
    "lengthM" REAL,
    "widthM" REAL,
    "heightM" REAL,
    "airMode" TEXT,
    "airChangesPerHour" REAL,
    "airFlowM3PerH" REAL,
    "openingWidthM" REAL,
    "openingHeightM" REAL,
    "openings" TEXT,
    "exits" INTEGER,
    "surface" TEXT,
    "detectors" TEXT,
    "fuelLoad" TEXT,
    "peoplePresent" INTEGER,
    "evacuationS" REAL,
    "personDistanceM" REAL,
    "combustibleDistanceM" REAL,
    "clearHeightM" REAL,
    "notes" TEXT,
    "createdAt" DATETIME NOT NULL,
    "archivedAt" DATETIME,
    "revision" INTEGER NOT NULL DEFAULT 1,
    CONSTRAINT "Area_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Area_schoolId_siteId_fkey" FOREIGN KEY ("schoolId", "siteId") REFERENCES "Site" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Score" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "schoolId" TEXT NOT NULL,
    "versionId" TEXT NOT NULL,
    "inputJson" TEXT NOT NULL,
    "inputHash" TEXT NOT NULL,
    "contentVersion" TEXT NOT NULL,
    "engineVersion" TEXT NOT NULL,
    "seed" BIGINT NOT NULL,
    "draws" INTEGER NOT NULL,
    "resultJson" TEXT NOT NULL,
    "resultHash" TEXT NOT NULL,
    "createdAt" DATETIME NOT NULL,
    CONSTRAINT "Score_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Score_schoolId_versionId_fkey" FOREIGN KEY ("schoolId", "versionId") REFERENCES "AssessmentVersion" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "StopAcceptance" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "schoolId" TEXT NOT NULL,
    "versionId" TEXT NOT NULL,
    "stopId" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "replacement" TEXT NOT NULL,
    "paper" TEXT,
    "endsOn" TEXT NOT NULL,
    "byId" TEXT NOT NULL,
    "byName" TEXT NOT NULL,
    "at" DATETIME NOT NULL,
    "withdrawnById" TEXT,
    "withdrawnAt" DATETIME,
    "withdrawnReason" TEXT,
    CONSTRAINT "StopAcceptance_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "StopAcceptance_schoolId_versionId_fkey" FOREIGN KEY ("schoolId", "versionId") REFERENCES "AssessmentVersion" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "StopAcceptance_schoolId_byId_fkey" FOREIGN KEY ("schoolId", "byId") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "StopAcceptance_schoolId_withdrawnById_fkey" FOREIGN KEY ("schoolId", "withdrawnById") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Suspension" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "schoolId" TEXT NOT NULL,
    "versionId" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "byId" TEXT NOT NULL,
    "byName" TEXT NOT NULL,
    "at" DATETIME NOT NULL,
    "liftedById" TEXT,
    "liftedByName" TEXT,
    "liftedAt" DATETIME,
    "liftedReason" TEXT,
    CONSTRAINT "Suspension_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Suspension_schoolId_versionId_fkey" FOREIGN KEY ("schoolId", "versionId") REFERENCES "AssessmentVersion" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Suspension_schoolId_byId_fkey" FOREIGN KEY ("schoolId", "byId") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Suspension_schoolId_liftedById_fkey" FOREIGN KEY ("schoolId", "liftedById") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "ReviewRequest" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "schoolId" TEXT NOT NULL,
    "versionId" TEXT NOT NULL,
    "cause" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "incidentId" TEXT,
    "byId" TEXT,
    "byName" TEXT NOT NULL,
    "at" DATETIME NOT NULL,
    "settledById" TEXT,
    "settledAt" DATETIME,
    "settledHow" TEXT,
    CONSTRAINT "ReviewRequest_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "ReviewRequest_schoolId_versionId_fkey" FOREIGN KEY ("schoolId", "versionId") REFERENCES "AssessmentVersion" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "ReviewRequest_schoolId_incidentId_fkey" FOREIGN KEY ("schoolId", "incidentId") REFERENCES "Incident" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "ReviewRequest_schoolId_byId_fkey" FOREIGN KEY ("schoolId", "byId") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "ReviewRequest_schoolId_settledById_fkey" FOREIGN KEY ("schoolId", "settledById") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "District" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "name" TEXT NOT NULL,
    "createdAt" DATETIME NOT NULL
);

-- CreateTable
CREATE TABLE "School" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "districtId" TEXT,
    "name" TEXT NOT NULL,
    "address" TEXT NOT NULL,
    "emergencyNumber" TEXT NOT NULL,
    "meetingPlace" TEXT NOT NULL,
    "secondMeetingPlace" TEXT,
    "officerPhone" TEXT,
    "locale" TEXT NOT NULL,
    "units" TEXT NOT NULL,
    "paper" TEXT NOT NULL,
    "timeZone" TEXT NOT NULL DEFAULT 'UTC',
    "rulesJson" TEXT NOT NULL DEFAULT '{}',
    "photosKeptMonths" INTEGER,
    "personsKeptMonths" INTEGER,
    "demo" BOOLEAN NOT NULL DEFAULT false,
    "createdAt" DATETIME NOT NULL,
    "revision" INTEGER NOT NULL DEFAULT 1,
    CONSTRAINT "School_districtId_fkey" FOREIGN KEY ("districtId") REFERENCES "District" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Session" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "schoolId" TEXT NOT NULL,
    "siteId" TEXT NOT NULL,
    "startedAt" DATETIME NOT NULL,
    "endedAt" DATETIME,
    "peoplePresent" INTEGER,
    "openingJson" TEXT NOT NULL DEFAULT '{}',
    "closingJson" TEXT NOT NULL DEFAULT '{}',
    "note" TEXT,
    "byId" TEXT NOT NULL,
    "byName" TEXT NOT NULL,
    "revision" INTEGER NOT NULL DEFAULT 1,
    CONSTRAINT "Session_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Session_schoolId_siteId_fkey" FOREIGN KEY ("schoolId", "siteId") REFERENCES "Site" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Session_schoolId_byId_fkey" FOREIGN KEY ("schoolId", "byId") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "SessionPack" (
    "schoolId" TEXT NOT NULL,
    "sessionId" TEXT NOT NULL,
    "packId" TEXT NOT NULL,
    "charges" INTEGER NOT NULL,
    "flights" INTEGER,
    "crashes" INTEGER,
    "storedVolts" REAL,
    "note" TEXT,

    PRIMARY KEY ("sessionId", "packId"),
    CONSTRAINT "SessionPack_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "SessionPack_schoolId_sessionId_fkey" FOREIGN KEY ("schoolId", "sessionId") REFERENCES "Session" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "SessionPack_schoolId_packId_fkey" FOREIGN KEY ("schoolId", "packId") REFERENCES "Pack" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "SigningAuthority" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "schoolId" TEXT NOT NULL,
    "certificate" BLOB NOT NULL,
    "fingerprintSha256" TEXT NOT NULL,
    "sealedKey" TEXT NOT NULL,
    "validFrom" DATETIME NOT NULL,
    "validUntil" DATETIME NOT NULL,
    "createdAt" DATETIME NOT NULL,
    "replacedAt" DATETIME,
    CONSTRAINT "SigningAuthority_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "PersonCertificate" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "schoolId" TEXT NOT NULL,
    "personId" TEXT NOT NULL,
    "authorityId" TEXT NOT NULL,
    "certificate" BLOB NOT NULL,
    "fingerprintSha256" TEXT NOT NULL,
    "sealedKey" TEXT NOT NULL,
    "validFrom" DATETIME NOT NULL,
    "validUntil" DATETIME NOT NULL,
    "createdAt" DATETIME NOT NULL,
    "revokedAt" DATETIME,
    "revokedReason" TEXT,
    CONSTRAINT "PersonCertificate_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "PersonCertificate_schoolId_personId_fkey" FOREIGN KEY ("schoolId", "personId") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "PersonCertificate_schoolId_authorityId_fkey" FOREIGN KEY ("schoolId", "authorityId") REFERENCES "SigningAuthority" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Signature" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "schoolId" TEXT NOT NULL,
    "documentId" TEXT NOT NULL,
    "part" TEXT NOT NULL,
    "signerId" TEXT NOT NULL,
    "signerName" TEXT NOT NULL,
    "signerPost" TEXT NOT NULL,
    "certificateId" TEXT NOT NULL,
    "documentRevision" INTEGER NOT NULL,
    "at" DATETIME NOT NULL,
    CONSTRAINT "Signature_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Signature_schoolId_documentId_fkey" FOREIGN KEY ("schoolId", "documentId") REFERENCES "Document" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Signature_schoolId_signerId_fkey" FOREIGN KEY ("schoolId", "signerId") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Signature_schoolId_certificateId_fkey" FOREIGN KEY ("schoolId", "certificateId") REFERENCES "PersonCertificate" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateIndex
CREATE INDEX "Action_schoolId_state_dueOn_idx" ON "Action"("schoolId", "state", "dueOn");

-- CreateIndex
CREATE INDEX "Action_versionId_idx" ON "Action"("versionId");

-- CreateIndex
CREATE UNIQUE INDEX "Action_schoolId_id_key" ON "Action"("schoolId", "id");

-- CreateIndex
CREATE INDEX "ActionEvidence_actionId_idx" ON "ActionEvidence"("actionId");

-- CreateIndex
CREATE INDEX "Assessment_siteId_idx" ON "Assessment"("siteId");

-- CreateIndex
CREATE UNIQUE INDEX "Assessment_schoolId_id_key" ON "Assessment"("schoolId", "id");

-- CreateIndex
CREATE INDEX "AssessmentVersion_schoolId_state_idx" ON "AssessmentVersion"("schoolId", "state");

-- CreateIndex
CREATE UNIQUE INDEX "AssessmentVersion_schoolId_id_key" ON "AssessmentVersion"("schoolId", "id");

-- CreateIndex
CREATE UNIQUE INDEX "AssessmentVersion_assessmentId_number_key" ON "AssessmentVersion"("assessmentId", "number");

-- CreateIndex
CREATE INDEX "AnswerEvidence_versionId_questionId_idx" ON "AnswerEvidence"("versionId", "questionId");

-- CreateIndex
CREATE INDEX "Comment_versionId_questionId_idx" ON "Comment"("versionId", "questionId");

-- CreateIndex
CREATE UNIQUE INDEX "Comment_schoolId_id_key" ON "Comment"("schoolId", "id");

-- CreateIndex
CREATE UNIQUE INDEX "CaretakerLink_tokenSeal_key" ON "CaretakerLink"("tokenSeal");

-- CreateIndex
CREATE INDEX "CaretakerLink_versionId_idx" ON "CaretakerLink"("versionId");

-- CreateIndex
CREATE INDEX "AuditEntry_schoolId_subjectId_idx" ON "AuditEntry"("schoolId", "subjectId");

-- CreateIndex
CREATE INDEX "AuditEntry_schoolId_kind_idx" ON "AuditEntry"("schoolId", "kind");

-- CreateIndex
CREATE UNIQUE INDEX "User_email_key" ON "User"("email");

-- CreateIndex
CREATE UNIQUE INDEX "SignInSession_token_key" ON "SignInSession"("token");

-- CreateIndex
CREATE INDEX "SignInSession_userId_idx" ON "SignInSession"("userId");

-- CreateIndex
CREATE INDEX "SignInMethod_userId_idx" ON "SignInMethod"("userId");

-- CreateIndex
CREATE UNIQUE INDEX "SignInMethod_providerId_accountId_key" ON "SignInMethod"("providerId", "accountId");

-- CreateIndex
CREATE INDEX "SignInToken_identifier_idx" ON "SignInToken"("identifier");

-- CreateIndex
CREATE INDEX "SignInAttempt_bucket_at_idx" ON "SignInAttempt"("bucket", "at");

-- CreateIndex
CREATE UNIQUE INDEX "Document_number_key" ON "Document"("number");

-- CreateIndex
CREATE INDEX "Document_versionId_idx" ON "Document"("versionId");

-- CreateIndex
CREATE INDEX "Document_incidentId_idx" ON "Document"("incidentId");

-- CreateIndex
CREATE INDEX "Document_eventId_idx" ON "Document"("eventId");

-- CreateIndex
CREATE INDEX "Document_schoolId_kind_createdAt_idx" ON "Document"("schoolId", "kind", "createdAt");

-- CreateIndex
CREATE UNIQUE INDEX "Document_schoolId_id_key" ON "Document"("schoolId", "id");

-- CreateIndex
CREATE INDEX "DocumentRevision_sha256_idx" ON "DocumentRevision"("sha256");

-- CreateIndex
CREATE UNIQUE INDEX "ShareLink_tokenSeal_key" ON "ShareLink"("tokenSeal");

-- CreateIndex
CREATE INDEX "ShareLink_schoolId_createdAt_idx" ON "ShareLink"("schoolId", "createdAt");

-- CreateIndex
CREATE INDEX "Event_schoolId_startsAt_idx" ON "Event"("schoolId", "startsAt");

-- CreateIndex
CREATE UNIQUE INDEX "Event_schoolId_id_key" ON "Event"("schoolId", "id");

-- CreateIndex
CREATE INDEX "EventPack_packId_idx" ON "EventPack"("packId");

-- CreateIndex
CREATE INDEX "EventAdult_eventId_idx" ON "EventAdult"("eventId");

-- CreateIndex
CREATE INDEX "EventAcceptance_eventId_lineId_idx" ON "EventAcceptance"("eventId", "lineId");

-- CreateIndex
CREATE UNIQUE INDEX "StoredFile_schoolId_id_key" ON "StoredFile"("schoolId", "id");

-- CreateIndex
CREATE INDEX "Incident_schoolId_happenedAt_idx" ON "Incident"("schoolId", "happenedAt");

-- CreateIndex
CREATE UNIQUE INDEX "Incident_schoolId_id_key" ON "Incident"("schoolId", "id");

-- CreateIndex
CREATE UNIQUE INDEX "Incident_schoolId_number_key" ON "Incident"("schoolId", "number");

-- CreateIndex
CREATE UNIQUE INDEX "Incident_schoolId_clientKey_key" ON "Incident"("schoolId", "clientKey");

-- CreateIndex
CREATE INDEX "IncidentPack_incidentId_idx" ON "IncidentPack"("incidentId");

-- CreateIndex
CREATE INDEX "IncidentPack_packId_idx" ON "IncidentPack"("packId");

-- CreateIndex
CREATE INDEX "IncidentPerson_incidentId_idx" ON "IncidentPerson"("incidentId");

-- CreateIndex
CREATE INDEX "IncidentPhoto_incidentId_idx" ON "IncidentPhoto"("incidentId");

-- CreateIndex
CREATE UNIQUE INDEX "IncidentCorrection_incidentId_number_key" ON "IncidentCorrection"("incidentId", "number");

-- CreateIndex
CREATE INDEX "IncidentFollowUp_incidentId_at_idx" ON "IncidentFollowUp"("incidentId", "at");

-- CreateIndex
CREATE INDEX "Pack_schoolId_state_idx" ON "Pack"("schoolId", "state");

-- CreateIndex
CREATE UNIQUE INDEX "Pack_schoolId_id_key" ON "Pack"("schoolId", "id");

-- CreateIndex
CREATE UNIQUE INDEX "Pack_schoolId_labelKey_key" ON "Pack"("schoolId", "labelKey");

-- CreateIndex
CREATE INDEX "PackStateChange_packId_at_idx" ON "PackStateChange"("packId", "at");

-- CreateIndex
CREATE INDEX "PackStateChange_incidentId_idx" ON "PackStateChange"("incidentId");

-- CreateIndex
CREATE INDEX "PackCheck_packId_at_idx" ON "PackCheck"("packId", "at");

-- CreateIndex
CREATE UNIQUE INDEX "PackCheck_schoolId_id_key" ON "PackCheck"("schoolId", "id");

-- CreateIndex
CREATE UNIQUE INDEX "HandOver_schoolId_id_key" ON "HandOver"("schoolId", "id");

-- CreateIndex
CREATE INDEX "HandOverPack_handOverId_idx" ON "HandOverPack"("handOverId");

-- CreateIndex
CREATE UNIQUE INDEX "HandOverPack_schoolId_packId_key" ON "HandOverPack"("schoolId", "packId");

-- CreateIndex
CREATE UNIQUE INDEX "Person_userId_key" ON "Person"("userId");

-- CreateIndex
CREATE INDEX "Membership_personId_idx" ON "Membership"("personId");

-- CreateIndex
CREATE UNIQUE INDEX "Invitation_tokenSeal_key" ON "Invitation"("tokenSeal");

-- CreateIndex
CREATE INDEX "Invitation_schoolId_createdAt_idx" ON "Invitation"("schoolId", "createdAt");

-- CreateIndex
CREATE UNIQUE INDEX "Site_schoolId_id_key" ON "Site"("schoolId", "id");

-- CreateIndex
CREATE UNIQUE INDEX "Site_schoolId_name_key" ON "Site"("schoolId", "name");

-- CreateIndex
CREATE UNIQUE INDEX "Area_schoolId_id_key" ON "Area"("schoolId", "id");

-- CreateIndex
CREATE UNIQUE INDEX "Area_siteId_name_key" ON "Area"("siteId", "name");

-- CreateIndex
CREATE UNIQUE INDEX "Score_schoolId_id_key" ON "Score"("schoolId", "id");

-- CreateIndex
CREATE UNIQUE INDEX "Score_versionId_inputHash_engineVersion_seed_draws_key" ON "Score"("versionId", "inputHash", "engineVersion", "seed", "draws");

-- CreateIndex
CREATE INDEX "StopAcceptance_versionId_stopId_idx" ON "StopAcceptance"("versionId", "stopId");

-- CreateIndex
CREATE INDEX "Suspension_versionId_liftedAt_idx" ON "Suspension"("versionId", "liftedAt");

-- CreateIndex
CREATE INDEX "ReviewRequest_versionId_settledAt_idx" ON "ReviewRequest"("versionId", "settledAt");

-- CreateIndex
CREATE INDEX "School_districtId_idx" ON "School"("districtId");

-- CreateIndex
CREATE INDEX "Session_schoolId_startedAt_idx" ON "Session"("schoolId", "startedAt");

-- CreateIndex
CREATE UNIQUE INDEX "Session_schoolId_id_key" ON "Session"("schoolId", "id");

-- CreateIndex
CREATE INDEX "SessionPack_packId_idx" ON "SessionPack"("packId");

-- CreateIndex
CREATE UNIQUE INDEX "SigningAuthority_fingerprintSha256_key" ON "SigningAuthority"("fingerprintSha256");

-- CreateIndex
CREATE UNIQUE INDEX "SigningAuthority_schoolId_id_key" ON "SigningAuthority"("schoolId", "id");

-- CreateIndex
CREATE UNIQUE INDEX "PersonCertificate_fingerprintSha256_key" ON "PersonCertificate"("fingerprintSha256");

-- CreateIndex
CREATE INDEX "PersonCertificate_schoolId_personId_idx" ON "PersonCertificate"("schoolId", "personId");

-- CreateIndex
CREATE UNIQUE INDEX "PersonCertificate_schoolId_id_key" ON "PersonCertificate"("schoolId", "id");

-- CreateIndex
CREATE UNIQUE INDEX "Signature_documentId_part_key" ON "Signature"("documentId", "part");

-- CreateIndex
CREATE UNIQUE INDEX "Signature_documentId_signerId_key" ON "Signature"("documentId", "signerId");
