import type { RemovalWay } from "../../core/instrument/removal-output.ts";
import type { BodyOf } from "../../record/parts.ts";

type Removal = BodyOf<"removal">;
type Separated = NonNullable<BodyOf<"mishap">["separated"]>;

/** What the page about a piece always says in the same words; a test holds every one to the reading age of twelve. */
export const pieceWords = {
  title: "A piece of an instrument in your tooth",
  happened: "What happened",
  broke: "A thin tool broke in your tooth while we cleaned it. A small piece stayed in the root.",
  happens: "The tools are as thin as a hair, and the canals in a root are narrow and bent. So this can happen.",
  counts: "How clean the tooth is past the piece counts more than the piece itself.",
  done: "What was done",
  ways: "What can be done",
  waysWeighed: "What we weighed before",
  asKnown: "We weighed these ways before. This is what we knew of each.",
  others: "How it went for other people",
  boneHealed: "The bone healed",
  toothThere: "The tooth is still there",
  asAbove: "the same number as above",
  drawn: "Each dot shows how many of 100 people it was. The thin line shows how far off that may be.",
  worked: "In a study, the try worked in",
  workedInOne: "Studies differ. In one, the try worked in",
  workedInAnother: "In another, it worked in",
  toWork: "It worked if the piece came out or if the tools got past it.",
  healed: "The bone healed in",
  kept: "The tooth was still there in",
  ofPeople: "people",
  definition: "The tooth is gone, so no one counts how it heals.",
  noFigure: "We have no good number for this way.",
  hole: "When we try to take the piece out, the tool can make a hole in the root. It did in",
  notCompared:
    "In these studies, no one drew lots for who went which way. So the numbers can not tell which way is best for you.",
  close: "The numbers lie close to each other. They do not settle which way to go.",
  unknown: "What we do not know",
  outOrNot: "We can not tell if the piece will come out before we try.",
  germs: "We can not see if there are germs behind the piece.",
  longRun: "We do not know how your own tooth will do in ten years.",
  pieceAlone: "We have not yet worked out numbers for your tooth.",
  next: "What happens next",
  choose: "We talk about the ways. Then you choose. You can take your time.",
  stop: "We have set a point at which we stop, so that we do not cut too much of the tooth.",
  stopAfter: "We stop when we have tried for this long in all:",
  minutes: "minutes",
  tried: "So far we have tried this many times:",
  triedInAll: "We tried this many times:",
  again: "We look at the tooth again later, with an X-ray, to see how it heals.",
} as const;

/** How far down the root the piece sits. */
export const whereWords: Readonly<Record<"coronal" | "middle" | "apical", string>> = {
  coronal: "It sits near the top of the root.",
  middle: "It sits half way down the root.",
  apical: "It sits near the tip of the root.",
};

/** How clean the canal was when the tool broke. */
export const cleanWords: Readonly<Record<Exclude<Separated["stage"], "notRecorded">, string>> = {
  beforeCleaning: "It broke before this part of the root was clean.",
  partlyCleaned: "It broke when this part of the root was partly clean.",
  cleaned: "It broke when this part of the root was clean.",
};

/** Whether the piece is in sight. */
export const seenWords: Readonly<Record<Exclude<Separated["headSeen"], "notLooked">, string>> = {
  seen: "We can see the piece when we look into the root.",
  hidden: "We can not see the piece when we look into the root.",
};

/** Each way by name, and what it is. */
export const plainWays: Readonly<Record<RemovalWay, { readonly name: string; readonly is: string }>> = {
  remove: {
    name: "Take the piece out",
    is: "We free the piece and lift it out. To get to it, we cut away some of the root. What we cut does not grow back.",
  },
  bypass: {
    name: "Go past the piece",
    is: "We pass the piece with a very thin tool. Then we clean past it and fill the root with the piece in it.",
  },
  leave: {
    name: "Leave the piece in",
    is: "We clean and fill the root down to the piece. The piece stays in the root.",
  },
  surgery: {
    name: "Cut off the tip of the root",
    is: "We open the gum next to the tooth. We cut off the tip of the root and close it from there.",
  },
  extraction: {
    name: "Take the tooth out",
    is: "We take the whole tooth out. That leaves a gap. We can talk about how to close it.",
  },
};

/** What came of it, and what it means. */
export const resultPlainly: Readonly<Record<NonNullable<Removal["result"]>["is"], string>> = {
  removed: "The piece is out. Now we can clean and fill the whole root.",
  bypassed: "We got past the piece. Now we can clean and fill the root with the piece in it.",
  left: "The piece stays in the root. We clean and fill the root down to it.",
  surgery: "We will cut off the tip of the root, or send you to someone who does.",
  extraction: "The tooth has to come out. We can talk about how to close the gap.",
  referred: "We send you to someone who does this more often than we do.",
};
