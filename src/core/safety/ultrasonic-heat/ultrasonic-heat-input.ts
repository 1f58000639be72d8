import { z } from "zod";

const burst = z.strictObject({
  seconds: z.number().gt(0).max(1_800).describe("How long the tip worked without a pause, in s."),
  restSeconds: z.number().min(0).max(7_200).describe("Pause after it; 0 where the next followed at once."),
  coolant: z.enum(["none", "air", "water"]),
  power: z.number().gt(0).max(100).optional().describe("As the device shows it; scales of devices differ."),
  on: z.enum(["fragment", "post", "root canal"]).describe("What the tip touched; root canal: activated irrigant."),
  alloy: z.enum(["nickelTitanium", "steel"]).optional().describe("Of a fragment."),
});
/** One burst of ultrasound and the rest after it. */
export type Burst = z.infer<typeof burst>;

/** What the minutes of ultrasound are held against published heat from. */
export const ultrasonicHeatInput = z.strictObject({
  bursts: z.array(burst).max(200).describe("In their order."),
});
/** See {@link ultrasonicHeatInput}. */
export type UltrasonicHeatInput = z.infer<typeof ultrasonicHeatInput>;
