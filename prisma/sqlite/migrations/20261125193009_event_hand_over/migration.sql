-- AlterTable
ALTER TABLE "ShareLink" ADD COLUMN "answeredByName" TEXT;

-- RedefineTables
PRAGMA defer_foreign_keys=ON;
PRAGMA foreign_keys=OFF;
CREATE TABLE "new_Event" (
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
    "officerId" TEXT,
    "createdAt" DATETIME NOT NULL,
    "submittedAt" DATETIME,
    "returnedAt" DATETIME,
    "returnedReason" TEXT,
    "signedAt" DATETIME,
    "withdrawnAt" DATETIME,
    "withdrawnReason" TEXT,
    "cancelledAt" DATETIME,
    "cancelledReason" TEXT,
    "copiedFromId" TEXT,
    "revision" INTEGER NOT NULL DEFAULT 1,
    CONSTRAINT "Event_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Event_schoolId_siteId_fkey" FOREIGN KEY ("schoolId", "siteId") REFERENCES "Site" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Event_schoolId_versionId_fkey" FOREIGN KEY ("schoolId", "versionId") REFERENCES "AssessmentVersion" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Event_schoolId_preparedById_fkey" FOREIGN KEY ("schoolId", "preparedById") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Event_schoolId_officerId_fkey" FOREIGN KEY ("schoolId", "officerId") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Event_schoolId_copiedFromId_fkey" FOREIGN KEY ("schoolId", "copiedFromId") REFERENCES "Event" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE
);
INSERT INTO "new_Event" ("cancelledAt", "cancelledReason", "contentVersion", "copiedFromId", "createdAt", "detailsJson", "endsAt", "id", "people", "preparedById", "preparedByName", "revision", "scheduleJson", "schoolId", "signedAt", "siteId", "spectators", "startsAt", "state", "submittedAt", "teams", "title", "versionId") SELECT "cancelledAt", "cancelledReason", "contentVersion", "copiedFromId", "createdAt", "detailsJson", "endsAt", "id", "people", "preparedById", "preparedByName", "revision", "scheduleJson", "schoolId", "signedAt", "siteId", "spectators", "startsAt", "state", "submittedAt", "teams", "title", "versionId" FROM "Event";
DROP TABLE "Event";
ALTER TABLE "new_Event" RENAME TO "Event";
CREATE INDEX "Event_schoolId_startsAt_idx" ON "Event"("schoolId", "startsAt");
CREATE UNIQUE INDEX "Event_schoolId_id_key" ON "Event"("schoolId", "id");
CREATE TABLE "new_EventAcceptance" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "schoolId" TEXT NOT NULL,
    "eventId" TEXT NOT NULL,
    "lineId" TEXT NOT NULL,
    "words" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "byId" TEXT NOT NULL,
    "byName" TEXT NOT NULL,
    "at" DATETIME NOT NULL,
    "endedAt" DATETIME,
    CONSTRAINT "EventAcceptance_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "EventAcceptance_schoolId_eventId_fkey" FOREIGN KEY ("schoolId", "eventId") REFERENCES "Event" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "EventAcceptance_schoolId_byId_fkey" FOREIGN KEY ("schoolId", "byId") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE
);
INSERT INTO "new_EventAcceptance" ("at", "byId", "byName", "endedAt", "eventId", "id", "lineId", "reason", "schoolId") SELECT "at", "byId", "byName", "endedAt", "eventId", "id", "lineId", "reason", "schoolId" FROM "EventAcceptance";
DROP TABLE "EventAcceptance";
ALTER TABLE "new_EventAcceptance" RENAME TO "EventAcceptance";
CREATE INDEX "EventAcceptance_eventId_lineId_idx" ON "EventAcceptance"("eventId", "lineId");
CREATE TABLE "new_EventAdult" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "schoolId" TEXT NOT NULL,
    "eventId" TEXT NOT NULL,
    "position" INTEGER NOT NULL,
    "name" TEXT NOT NULL,
    "partsJson" TEXT NOT NULL,
    "phone" TEXT,
    CONSTRAINT "EventAdult_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "EventAdult_schoolId_eventId_fkey" FOREIGN KEY ("schoolId", "eventId") REFERENCES "Event" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE
);
INSERT INTO "new_EventAdult" ("eventId", "id", "name", "phone", "schoolId") SELECT "eventId", "id", "name", "phone", "schoolId" FROM "EventAdult";
DROP TABLE "EventAdult";
ALTER TABLE "new_EventAdult" RENAME TO "EventAdult";
CREATE INDEX "EventAdult_eventId_idx" ON "EventAdult"("eventId");
PRAGMA foreign_keys=ON;
PRAGMA defer_foreign_keys=OFF;
