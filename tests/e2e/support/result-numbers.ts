import { expect, type Page } from '@playwright/test';
import type { ScoreResult } from '../../../lib/core/result';
import { onceInWords, onceRangeWords } from '../../../lib/wording/frequency';
import { rounded } from '../../../lib/wording/numbers';

/** The ranking, the total and the reference line of a page are those of a result. */
export async function expectRankingOf(page: Page, result: ScoreResult): Promise<void> {
  const rows = page.locator('#ranking ol > li');
  await expect(rows).toHaveCount(result.risks.length);
  for (const [index, risk] of result.risks.entries()) {
    const row = rows.nth(index);
    await expect(row.getByRole('link', { name: risk.title })).toBeVisible();
    await expect(row).toContainText(onceInWords(risk.topFrequencyMean));
    if (risk.exposure > 0) await expect(row).toContainText(onceRangeWords(risk.frequency));
  }
  const behind = page.getByRole('complementary', { name: 'Behind the numbers' });
  await expect(behind).toContainText(`Harm ${rounded(result.totalHarm)} points (${rounded(result.totalHarmDraws.p05)} to ${rounded(result.totalHarmDraws.p95)})`);
  await expect(behind).toContainText(`seed ${result.seed}, 4,000 draws, input ${result.inputHash.slice(0, 16)}`);
}
