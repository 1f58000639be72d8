import { answer } from "../../topic.ts";
import { curvatureTopic } from "../curvature-topic.ts";

/** What the topic gives for a course in mm, its lengths and its profile there. */
export function measured(raw: unknown) {
  const found = answer(curvatureTopic, raw);
  const { lengthMm, chordMm, maxCurvaturePerMm, profile, smoothing } = found;
  if (lengthMm === undefined || chordMm === undefined || maxCurvaturePerMm === undefined)
    throw new Error("a course in mm has lengths");
  if (profile === undefined || smoothing === undefined) throw new Error("a course in mm has a profile");
  return { ...found, lengthMm, chordMm, maxCurvaturePerMm, profile, smoothing };
}
