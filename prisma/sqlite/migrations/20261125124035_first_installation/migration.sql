-- CreateTable
CREATE TABLE "Installation" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "createdAt" DATETIME NOT NULL,
    "createdByVersion" TEXT NOT NULL,
    "lastStartedAt" DATETIME NOT NULL
);
