import { z } from "zod";

/** A share, 0 to 1; of one that looks like a percent the fault says how it is written: 87 as 0.87. */
export const share = z
  .number()
  .refine((value) => value >= 0 && value <= 1, {
    error: ({ input }) => {
      const found = Number(input);
      return `is outside 0..1${found > 1 && found <= 100 ? `; a percent is written ${found / 100}` : ""}`;
    },
  })
  .meta({ minimum: 0, maximum: 1 });
