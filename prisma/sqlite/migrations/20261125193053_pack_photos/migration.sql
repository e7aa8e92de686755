-- CreateTable
CREATE TABLE "PackPhoto" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "schoolId" TEXT NOT NULL,
    "packId" TEXT NOT NULL,
    "fileId" TEXT NOT NULL,
    "at" DATETIME NOT NULL,
    "removedAt" DATETIME,
    CONSTRAINT "PackPhoto_schoolId_fkey" FOREIGN KEY ("schoolId") REFERENCES "School" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "PackPhoto_schoolId_packId_fkey" FOREIGN KEY ("schoolId", "packId") REFERENCES "Pack" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "PackPhoto_schoolId_fileId_fkey" FOREIGN KEY ("schoolId", "fileId") REFERENCES "StoredFile" ("schoolId", "id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateIndex
CREATE INDEX "PackPhoto_packId_idx" ON "PackPhoto"("packId");
