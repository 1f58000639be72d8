import type { BodyOf } from "../record/parts.ts";
import type { AnaestheticTold } from "./anaesthetic-told.ts";

type Stop = AnaestheticTold["stops"][number];
type Row = BodyOf<"visit">["anaesthetic"][number];

/**
 * The limits that what was given is above though nobody was asked about it: an amount, or what is known of the person, was changed
 * after the injection was noted, so that what stands is not what was read then.
 */
export const stopsUnasked = (stops: readonly Stop[], given: readonly Row[]): readonly Stop[] =>
  stops.filter(
    ({ by, says }) =>
      by !== "age" &&
      given.length > 0 &&
      !given.some(({ confirmed }) => confirmed?.asked.some((ask) => plain(ask).includes(plain(says)))),
  );

/** By its numbers, however they were written: 16.00 is 16. */
const plain = (text: string): string => text.replace(/\d+(\.\d+)?/g, (number) => String(Number(number)));
