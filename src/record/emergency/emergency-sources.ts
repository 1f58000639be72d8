import { z } from "zod";
import ascia from "../../../data/ascia-2017/source.json" with { type: "json" };
import asra from "../../../data/asra-2020-recalled/source.json" with { type: "json" };
import australiaDental from "../../../data/australia-dental-anaphylaxis/source.json" with { type: "json" };
import chokingAustralia from "../../../data/choking-australia/source.json" with { type: "json" };
import chokingEurope from "../../../data/choking-europe/source.json" with { type: "json" };
import elBoghdadly from "../../../data/el-boghdadly-2018/source.json" with { type: "json" };
import lothian from "../../../data/lothian-anaesthetic-toxicity/source.json" with { type: "json" };
import resuscitation from "../../../data/resuscitation-uk-2021/source.json" with { type: "json" };
import scotland from "../../../data/scotland-dental-anaphylaxis/source.json" with { type: "json" };

const file = z.strictObject({
  id: z.string(),
  called: z.string().min(1).describe("Its short name beside a line."),
  reference: z.string().min(1),
  verification: z.enum(["seen", "memory"]),
  read: z.string().min(1).describe("What of it was read."),
});
/** A published source of emergency steps, with the short name that stands beside a line. */
export type EmergencySource = z.infer<typeof file>;

/** The published sources of emergency steps that stand in no guide of a mishap. @source data/emergency-steps/steps.json */
export const emergencySources: readonly EmergencySource[] = z
  .array(file)
  .parse([
    ...[resuscitation, scotland, ascia, australiaDental, lothian],
    ...[elBoghdadly, asra, chokingEurope, chokingAustralia],
  ]);
