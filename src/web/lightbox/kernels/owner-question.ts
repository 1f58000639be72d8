import type { BoundBody } from "./film-gestures.ts";

/** One thing that can be said of a mark beside its owner, as a list of answers or in free words. */
export interface SaidOfMark {
  readonly says: string;
  readonly value: string;
  /** The answers by their word in the record; absent where it is said in the person's own words. */
  readonly answers?: Readonly<Record<string, string>>;
  /** What is offered for own words. */
  readonly offers?: readonly string[];
  readonly saying: (value: string) => BoundBody;
}

const kinds = { canal: "canal", filledCanal: "filling in a canal", instrument: "instrument", other: "something else" };
const sides = { "": "not said", mesial: "mesial", distal: "distal" };
const levels = { boneCrest: "bone crest (clinical)", cementoEnamelJunction: "cemento-enamel junction (anatomical)" };
const lies = { "": "as the course shows", short: "short of the apex", beyond: "beyond the apex" };

const isOf = <Answers extends object>(answers: Answers, value: string): value is Extract<keyof Answers, string> =>
  value in answers;

/** What else is asked of a mark: what was followed, which side a wall is on, where crown and root part, what a level is. */
export function saidOfMark(body: BoundBody): SaidOfMark | undefined {
  switch (body.shape) {
    case "trace":
      return {
        ...{ says: "What was followed", value: body.kind ?? "canal", answers: kinds },
        saying: (kind) => (isOf(kinds, kind) ? { ...body, kind } : body),
      };
    case "wall": {
      const { side, ...bare } = body;
      return {
        ...{ says: "Which wall", value: side ?? "", answers: sides },
        saying: (said) => (said === "mesial" || said === "distal" ? { ...bare, side: said } : bare),
      };
    }
    case "crownRoot":
      return {
        ...{ says: "Parted at", value: body.levelIs, answers: levels },
        saying: (levelIs) => (isOf(levels, levelIs) ? { ...body, levelIs } : body),
      };
    case "spot":
      return saidOfSpot(body);
    case "fragment":
      return undefined;
  }
}

function saidOfSpot(body: Extract<BoundBody, { shape: "spot" }>): SaidOfMark | undefined {
  if (body.is === "level")
    return {
      ...{ says: "What level", value: body.what, offers: ["start of bend", "end of bend", "canals join", "ledge"] },
      saying: (what) => ({ ...body, what: what.trim().slice(0, 300) }),
    };
  if (body.is !== "fillingEnd") return undefined;
  const { lies: lying, ...bare } = body;
  return {
    ...{ says: "It ends", value: lying ?? "", answers: lies },
    saying: (said) => (said === "short" || said === "beyond" ? { ...bare, lies: said } : bare),
  };
}

/** What is asked of a mark that is drawn and not named yet. */
export function ownerQuestion(body: BoundBody): string {
  switch (body.shape) {
    case "trace":
      return "Which canal is this?";
    case "crownRoot":
      return "Which root is this?";
    case "fragment":
      return "Which canal is the fragment in?";
    case "wall":
      return "Which canal's wall is this?";
    case "spot":
      return spotQuestions[body.is ?? "level"];
  }
}

const spotQuestions = {
  apex: "Which canal ends here?",
  fillingEnd: "Which canal's filling ends here?",
  level: "Which canal is the level on?",
} as const;
