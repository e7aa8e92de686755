-- CreateTable
CREATE TABLE "PackPhoto" (
    "id" TEXT NOT NULL,
    "schoolId" TEXT NOT NULL,
    "packId" TEXT NOT NULL,
    "fileId" TEXT NOT NULL,
    "at" TIMESTAMP(3) NOT NULL,
    "removedAt" TIMESTAMP(3),

    CONSTRAINT "PackPhoto_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "PackPhoto_packId_idx" ON "PackPhoto"("packId");

-- AddForeignKey
ALTER TABLE "PackPhoto" ADD CONSTRAINT "PackPhoto_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "PackPhoto" ADD CONSTRAINT "PackPhoto_schoolId_packId_fkey" FOREIGN KEY ("schoolId", "packId") REFERENCES "Pack"("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "PackPhoto" ADD CONSTRAINT "PackPhoto_schoolId_fileId_fkey" FOREIGN KEY ("schoolId", "fileId") REFERENCES "StoredFile"("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
