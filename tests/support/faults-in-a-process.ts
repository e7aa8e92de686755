// Run by a test, which cannot load the content itself: node --import tsx faults-in-a-process.ts <document>...
import { readFileSync } from 'node:fs';
import { currentContent } from '@/lib/content/editions';
import { faultInWords } from '@/lib/interchange/json/fault';
import { readAssessment } from '@/lib/interchange/read-assessment';

const faults = process.argv.slice(2).map((file) => {
  const read = readAssessment(readFileSync(file, 'utf8'), currentContent);
  return [file, read.ok ? [] : read.faults.map(faultInWords)] as const;
});
console.log(JSON.stringify(Object.fromEntries(faults)));
