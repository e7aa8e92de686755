import { z } from 'zod';

/** Pieces that several parts of an edition share. Everything is strict: an unknown key is a fault. */
export const text = z.string().min(1);
export const finite = z.number();
export const share = z.number().min(0).max(1);

export const controlStateSchema = z.enum(['in place', 'partly', 'absent', 'not sure', 'not applicable']);
export const severityClassSchema = z.union([z.literal(1), z.literal(2), z.literal(3), z.literal(4), z.literal(5)]);
export const inputValueSchema = z.union([z.number(), z.string()]);
export const rangeSchema = z.strictObject({ min: finite, max: finite });
export const gradeSchema = z.enum(['low', 'moderate', 'high', 'extreme']);
