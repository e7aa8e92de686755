-- CreateTable
CREATE TABLE "Installation" (
    "id" TEXT NOT NULL,
    "createdAt" TIMESTAMP(3) NOT NULL,
    "createdByVersion" TEXT NOT NULL,
    "lastStartedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Installation_pkey" PRIMARY KEY ("id")
);
