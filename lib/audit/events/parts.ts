import { z } from 'zod';

/** A reason, a note, a title: as it was typed. */
export const words = z.string();
export const id = z.string().min(1);
export const day = z.iso.date();
export const moment = z.iso.datetime();
export const sha256 = z.string().regex(/^[0-9a-f]{64}$/);
export const count = z.int().min(0);
export const none = z.strictObject({});

const Scalar = z.union([z.string(), z.number(), z.boolean(), z.null()]);

/** Fields that were changed, with what stood there before. */
export const changes = z.record(z.string(), z.strictObject({ from: Scalar, to: Scalar }));
