import type { Refusal } from './migration';

/** Returns one or two sentences that tell the person who runs the program what is wrong and what to do. */
export function refusalInWords(refusal: Refusal): string {
  switch (refusal.kind) {
    case 'failed-earlier':
      return `The change ${refusal.migration} to the database was begun earlier and never finished. Restore your last backup, then start again.`;
    case 'changed':
      return `The change ${refusal.migration} was applied to this database, and its file has been edited since. Put the original file back; nothing was changed.`;
    case 'unknown':
      return `This database was made by a newer version: it holds the change ${refusal.migration}, which this version does not know. Start the newer version; nothing was changed.`;
    case 'sql-failed':
      return `The change ${refusal.migration} to the database failed and was taken back in full: ${refusal.message}`;
    case 'foreign-keys-broken':
      return `The changes to the database would leave rows that point to nothing, so they were taken back in full: ${refusal.message}`;
  }
}
