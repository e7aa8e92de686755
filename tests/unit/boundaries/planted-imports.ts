/** One file with one import; `rule` names the boundary it breaks, or is absent where the import is allowed. */
export interface PlantedImport {
  file: string;
  statement: string;
  rule?: string;
  /** Where the cruiser reports it, when that is not the file. */
  reportedAs?: string;
}

/** Files the planted imports point to. They import nothing themselves. */
export const TARGETS = [
  'lib/units/quantity.ts',
  'lib/content/schema.ts',
  'lib/reference/gases.ts',
  'lib/core/result.ts',
  'lib/core/risk/rate.ts',
  'lib/core/smoke/layer.ts',
  'lib/wording/grades.ts',
  'lib/db/client.ts',
  'lib/forms/fields.ts',
  'lib/pdf/frame.tsx',
  'lib/places/site.ts',
  'lib/server/database.ts',
  'app/_components/button.tsx',
  'app/try/page.tsx',
  'scripts/start/ports.mjs',
  'scripts/bench.ts',
  'tests/support/expect-within.ts',
];

/** Packages that exist in the planted project, as empty ones. */
export const PACKAGES = ['zod', 'd3-scale', 'better-sqlite3', 'react', 'next', 'server-only', 'left-out'];
/** The one of devDependencies. */
export const TOOL = 'vitest';

export const PLANTED: readonly PlantedImport[] = [
  { file: 'lib/units/bad-core.ts', statement: "import '@/lib/core/result';", rule: 'lib/units-knows-only-its-own' },
  { file: 'lib/units/good.ts', statement: "import './quantity';" },
  { file: 'lib/reference/bad-core.ts', statement: "import type { X } from '@/lib/core/result';", rule: 'lib/reference-knows-only-its-own' },
  { file: 'lib/reference/good.ts', statement: "import type { X } from '@/lib/content/model';" },
  { file: 'lib/core/bad-package.ts', statement: "import 'zod';", rule: 'lib/core-knows-only-its-own' },
  { file: 'lib/core/bad-chart-package.ts', statement: "import 'd3-scale';", rule: 'lib/core-knows-only-its-own' },
  { file: 'lib/core/bad-built-in.ts', statement: "import 'node:fs';", rule: 'lib/core-knows-only-its-own' },
  { file: 'lib/core/bad-wording.ts', statement: "import '@/lib/wording/grades';", rule: 'lib/core-knows-only-its-own' },
  { file: 'lib/core/bad-schema.ts', statement: "import type { X } from '@/lib/content/schema';", rule: 'lib/core-knows-only-its-own' },
  { file: 'lib/core/bad-model-value.ts', statement: "import { x } from '@/lib/content/model'; x;", rule: 'content-model-is-only-types' },
  { file: 'lib/core/good.ts', statement: "import '@/lib/units/quantity'; import '@/lib/reference/gases'; import type { X } from '@/lib/content/model';" },
  { file: 'lib/content/model.ts', statement: "import 'zod'; export const x = 1; export type X = number;", rule: 'content-model-imports-nothing' },
  { file: 'lib/content/guidance-model.ts', statement: "import 'zod'; export type X = number;", rule: 'content-model-imports-nothing' },
  { file: 'lib/content/bad-core.ts', statement: "import '@/lib/core/result';", rule: 'lib/content-knows-only-its-own' },
  { file: 'lib/content/good.ts', statement: "import 'zod'; import './model';" },
  { file: 'lib/images/bad-db.ts', statement: "import '@/lib/db/client';", rule: 'lib/images-knows-only-its-own' },
  { file: 'lib/images/good.ts', statement: "import 'node:crypto';" },
  { file: 'lib/wording/bad-risk.ts', statement: "import '@/lib/core/risk/rate';", rule: 'lib/wording-knows-only-its-own' },
  { file: 'lib/wording/good.ts', statement: "import '@/lib/core/result';" },
  { file: 'lib/report/bad-risk.ts', statement: "import '@/lib/core/risk/rate';", rule: 'lib/report-knows-only-its-own' },
  { file: 'lib/report/good.ts', statement: "import '@/lib/core/result'; import '@/lib/wording/grades'; import '@/lib/units/quantity';" },
  { file: 'lib/charts/bad-react.ts', statement: "import 'react';", rule: 'lib/charts-knows-only-its-own' },
  { file: 'lib/charts/good.ts', statement: "import 'd3-scale'; import '@/lib/core/risk/rate'; import '@/lib/wording/grades';" },
  { file: 'lib/interchange/bad-risk.ts', statement: "import '@/lib/core/risk/rate';", rule: 'lib/interchange-knows-only-its-own' },
  { file: 'lib/interchange/bad-built-in.ts', statement: "import 'node:crypto';", rule: 'lib/interchange-knows-only-its-own' },
  { file: 'lib/interchange/good.ts', statement: "import 'zod'; import '@/lib/content/schema'; import '@/lib/core/result';" },
  { file: 'lib/questionnaire/bad-db.ts', statement: "import '@/lib/db/client';", rule: 'lib/questionnaire-knows-only-its-own' },
  { file: 'lib/db/bad-server.ts', statement: "import '@/lib/server/database';", rule: 'lib/db-knows-only-its-own' },
  { file: 'lib/db/bad-pdf.ts', statement: "import '@/lib/pdf/frame';", rule: 'lib/db-knows-only-its-own' },
  { file: 'lib/papers/bad-pdf.ts', statement: "import '@/lib/pdf/frame';", rule: 'lib/papers-knows-only-its-own' },
  { file: 'lib/access/bad-core.ts', statement: "import '@/lib/core/result';", rule: 'lib/access-knows-only-its-own' },
  { file: 'lib/audit/bad-core.ts', statement: "import '@/lib/core/result';", rule: 'lib/audit-knows-only-its-own' },
  { file: 'lib/forms/bad-db.ts', statement: "import '@/lib/db/client';", rule: 'lib/forms-knows-only-its-own' },
  { file: 'lib/csv/bad-package.ts', statement: "import 'zod';", rule: 'lib/csv-knows-only-its-own' },
  { file: 'lib/packs/bad-other-area.ts', statement: "import '@/lib/places/site';", rule: 'lib/packs-knows-only-its-own' },
  { file: 'lib/incidents/bad-db.ts', statement: "import '@/lib/db/client';", rule: 'lib/incidents-knows-only-its-own' },
  { file: 'lib/people/bad-built-in.ts', statement: "import 'node:fs';", rule: 'lib/people-knows-only-its-own' },
  { file: 'lib/places/bad-server.ts', statement: "import '@/lib/server/database';", rule: 'lib/places-knows-only-its-own' },
  { file: 'lib/assessments/bad-other-area.ts', statement: "import '@/lib/places/site';", rule: 'lib/assessments-knows-only-its-own' },
  { file: 'lib/assessments/good.ts', statement: "import 'zod'; import '@/lib/core/result'; import '@/lib/forms/fields';" },
  { file: 'lib/pdf/bad-db.ts', statement: "import '@/lib/db/client';", rule: 'lib/pdf-knows-only-its-own' },
  { file: 'lib/pdf/structure/bad-built-in.ts', statement: "import 'node:fs';", rule: 'lib/pdf/structure-knows-only-its-own' },
  { file: 'lib/pdf/cms/bad-package.ts', statement: "import 'zod';", rule: 'lib/pdf/cms-knows-only-its-own' },
  { file: 'lib/pdf/certificates/bad-drawing.ts', statement: "import '../frame';", rule: 'lib/pdf/certificates-knows-only-its-own' },
  { file: 'lib/pdf/sign/bad-drawing.ts', statement: "import '../frame';", rule: 'lib/pdf/sign-knows-only-its-own' },
  { file: 'lib/pdf/verify/bad-drawing.ts', statement: "import '../frame';", rule: 'lib/pdf/verify-knows-only-its-own' },
  { file: 'lib/db/good.ts', statement: "import 'better-sqlite3'; import 'node:fs';" },
  { file: 'lib/server/bad-page.ts', statement: "import '@/app/try/page';", rule: 'lib/server-knows-only-its-own' },
  { file: 'lib/server/bad-package.ts', statement: "import 'left-out';", rule: 'lib/server-knows-only-its-own' },
  { file: 'lib/server/good.ts', statement: "import 'server-only'; import '@/lib/db/client'; import '@/lib/core/result';" },
  { file: 'lib/novelty/bad-unlisted.ts', statement: "import '@/lib/units/quantity';", rule: 'lib-folders-are-listed' },
  { file: 'app/_components/bad-server.tsx', statement: "import '@/lib/server/database';", rule: 'app/_components-knows-only-its-own' },
  { file: 'app/_components/bad-db.tsx', statement: "import type { X } from '@/lib/db/client';", rule: 'app/_components-knows-only-its-own' },
  { file: 'app/_components/bad-page.tsx', statement: "import '@/app/try/page';", rule: 'app/_components-knows-only-its-own' },
  { file: 'app/_components/good.tsx', statement: "import 'react'; import '@/lib/core/result'; import './button';" },
  { file: 'app/bad-db.tsx', statement: "import '@/lib/db/client';", rule: 'app-knows-only-its-own' },
  { file: 'app/bad-built-in.tsx', statement: "import 'node:fs';", rule: 'app-knows-only-its-own' },
  { file: 'app/good.tsx', statement: "import '@/lib/server/database'; import '@/app/_components/button'; import 'next';" },
  { file: 'scripts/start/bad-package.mjs', statement: "import 'zod';", rule: 'first-commands-need-no-package' },
  { file: 'scripts/bad-page.ts', statement: "import '@/app/try/page';", rule: 'scripts-do-not-use-pages' },
  { file: 'scripts/good.ts', statement: "import 'zod'; import '@/lib/db/client';" },
  { file: 'proxy.ts', statement: "import '@/scripts/bench';", rule: 'nobody-imports-scripts' },
  { file: 'scripts/bad-tests.ts', statement: "import '@/tests/support/expect-within';", rule: 'nobody-imports-tests' },
  { file: 'app/bad-tool.tsx', statement: `import '${TOOL}';`, rule: 'no-tools-in-the-program' },
  { file: 'tests/unit/bad-spelling.ts', statement: "import '@/lib/core/reslt';", rule: 'everything-can-be-found' },
  { file: 'tests/unit/good.ts', statement: "import '@/lib/core/result'; import '@/lib/db/client'; import '@/scripts/bench';" },
  { file: 'lib/core/circle-a.ts', statement: "import './circle-b';", rule: 'no-circle' },
  // A circle is reported once, at the file it is first met in.
  { file: 'lib/core/circle-b.ts', statement: "import './circle-a';" },
  { file: 'lib/core/risk/to-smoke.ts', statement: "import '../smoke/layer';" },
  { file: 'lib/core/smoke/to-risk.ts', statement: "import '../risk/rate';", rule: 'no-circle-of-core-folders', reportedAs: 'lib/core/smoke' },
  { file: 'lib/core/bad-orphan.ts', statement: 'export const alone = 1;', rule: 'no-orphan' },
];
