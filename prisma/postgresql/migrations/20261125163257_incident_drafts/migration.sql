-- CreateTable
CREATE TABLE "IncidentDraft" (
    "schoolId" TEXT NOT NULL,
    "personId" TEXT NOT NULL,
    "typedJson" TEXT NOT NULL,
    "savedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "IncidentDraft_pkey" PRIMARY KEY ("schoolId","personId")
);

-- AddForeignKey
ALTER TABLE "IncidentDraft" ADD CONSTRAINT "IncidentDraft_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "IncidentDraft" ADD CONSTRAINT "IncidentDraft_schoolId_personId_fkey" FOREIGN KEY ("schoolId", "personId") REFERENCES "Membership"("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE;
