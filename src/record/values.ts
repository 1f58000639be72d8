import { z } from "zod";

/** A calendar day as `2026-11-24`. */
export const day = z.iso.date().describe("A day, YYYY-MM-DD.");
/** A moment as `2026-11-24T09:30:00Z`, always in UTC. */
export const moment = z.iso.datetime().describe("A moment in UTC.");
/** A time of a day in the place where it was noted, as `09:05`. */
export const timeOfDay = z
  .string()
  .regex(/^([01]\d|2[0-3]):[0-5]\d$/, "is not a time of day, as 14:02")
  .describe("A time of the day, HH:MM, local.");
/** A tooth in the two-digit notation of ISO 3950; the record stores no other. */
export const toothNumber = z
  .string()
  .regex(/^([1-4][1-8]|[5-8][1-5])$/, "is not a tooth of ISO 3950 (11-48, 51-85)")
  .describe("A tooth, two digits of ISO 3950.");
/** The name of a canal or root as the trade writes it: MB1, MB2, DB, P, ML. */
export const canalName = z
  .string()
  .regex(/^[A-Z][A-Za-z0-9]{0,7}$/, "is not a name of a canal: a capital and up to seven letters or digits, as MB2")
  .describe("A canal's name, as MB2.");
/** Free words of the person; never asked for a name. */
export const words = z.string().trim().max(8_000);
/** A line of free words. */
export const line = z.string().trim().max(300);
/** The id of another part of the same case. */
export const otherPart = z.string().regex(/^[a-z0-9-]{3,64}$/, "is not the id of a part");

/** A length in mm inside a range. */
export const mmBetween = (low: number, high: number) => z.number().min(low).max(high).describe("mm");
/** A number inside a range, its unit in the description. */
export const between = (low: number, high: number, unit: string) => z.number().min(low).max(high).describe(unit);
/** A place in a film in pixels, [u to the right, v down]. */
export const filmPoint = z.tuple([z.number(), z.number()]).describe("[u, v] in pixels of the film.");
/** Yes, no, or not asked: a silence is never a no. */
export const yesNo = z.enum(["yes", "no", "notAsked"]);
