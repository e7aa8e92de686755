'use server';

import { ScopeInputSchema, SettingsInputSchema } from '@/lib/assessments/assessment-input';
import { saveScope, saveSettings } from '@/lib/server/assessments/change-version';
import { guardedAction } from '@/lib/server/forms/guarded-action';

export const saveScopeAction = guardedAction({ may: 'assessment.answer', schema: ScopeInputSchema, run: (input, actor) => saveScope(actor, input) });

export const saveSettingsAction = guardedAction({ may: 'assessment.answer', schema: SettingsInputSchema, run: (input, actor) => saveSettings(actor, input) });
