-- AlterTable
ALTER TABLE "Event" ADD COLUMN     "officerId" TEXT,
ADD COLUMN     "returnedAt" TIMESTAMP(3),
ADD COLUMN     "returnedReason" TEXT,
ADD COLUMN     "withdrawnAt" TIMESTAMP(3),
ADD COLUMN     "withdrawnReason" TEXT;

-- AlterTable
ALTER TABLE "EventAcceptance" ADD COLUMN     "words" TEXT NOT NULL;

-- AlterTable
ALTER TABLE "EventAdult" DROP COLUMN "part",
ADD COLUMN     "partsJson" TEXT NOT NULL,
ADD COLUMN     "position" INTEGER NOT NULL;

-- AlterTable
ALTER TABLE "ShareLink" ADD COLUMN     "answeredByName" TEXT;

-- AddForeignKey
ALTER TABLE "Event" ADD CONSTRAINT "Event_schoolId_officerId_fkey" FOREIGN KEY ("schoolId", "officerId") REFERENCES "Membership"("schoolId", "personId") ON DELETE RESTRICT ON UPDATE CASCADE;
