import { writeFileSync } from 'node:fs';
import { assessmentJsonSchema } from '@/lib/interchange/json-schema';

const FILE = new URL('../public/schema/sandbucket-assessment.v1.schema.json', import.meta.url);

writeFileSync(FILE, assessmentJsonSchema());
process.stdout.write('Wrote public/schema/sandbucket-assessment.v1.schema.json\n');
