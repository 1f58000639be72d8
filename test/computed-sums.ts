import { anaestheticTopic } from "../src/core/safety/anaesthetic-topic.ts";

/** What the sum of the anaesthetic says of a person of 70 kg and 40 years, for tests of what is shown of it. */
export const computedAnaesthetic = (input: object) =>
  anaestheticTopic.compute(anaestheticTopic.input.parse({ bodyMassKg: 70, ageYears: 40, ...input }));
