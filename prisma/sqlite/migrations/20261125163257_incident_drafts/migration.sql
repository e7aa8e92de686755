-- CreateTable
CREATE TABLE "IncidentDraft" (
    "schoolId" TEXT NOT NULL,
    "personId" TEXT NOT NULL,
    "typedJson" TEXT NOT NULL,
    "savedAt" DATETIME NOT NULL,

    PRIMARY KEY ("schoolId", "personId"),
    CONSTRAINT "IncidentDraft_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "IncidentDraft_schoolId_personId_fkey" FOREIGN KEY ("schoolId", "personId") REFERENCES "Membership" ("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE
);
