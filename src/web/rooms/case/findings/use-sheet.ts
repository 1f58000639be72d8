import { useState } from "react";
import { earlierSheets } from "../../../../record/earlier-sheets.ts";
import type { BodyOf, PartOf } from "../../../../record/parts.ts";
import { useEditedPart, useField } from "../../../parts/fields/editing.tsx";
import { useCaseNow } from "../case-now.ts";

type Body = BodyOf<"findings">;

/** A tooth of an earlier sheet, as one quiet column. */
export interface EarlierColumn {
  readonly sheet: PartOf<"findings">;
  readonly tooth: string;
}

/** A sheet of tests as it is written, with the earlier sheets that stand beside it. */
export interface Sheet {
  readonly body: Body;
  readonly teeth: Body["teeth"];
  readonly readOnly: boolean;
  readonly earlier: readonly EarlierColumn[];
  /** How many sheets there are before this one. */
  readonly before: number;
  readonly allShown: boolean;
  readonly showAll: (all: boolean) => void;
  readonly write: (teeth: Body["teeth"], inWords: string) => void;
}

/** So many earlier sheets stand beside a sheet at first, each with the tooth alone. */
const atFirst = 2;

/** See {@link Sheet}. */
export function useSheet(): Sheet {
  const part = useEditedPart();
  const { parts } = useCaseNow();
  const field = useField("teeth", "Tests by tooth");
  const body = useField("", "Findings").value as Body;
  const [allShown, showAll] = useState(false);
  const sheets = part.kind === "findings" ? earlierSheets(parts, part) : [];
  const shown = allShown ? sheets : sheets.slice(0, atFirst);
  return {
    ...{ body, teeth: body.teeth, readOnly: field.readOnly, before: sheets.length, allShown, showAll },
    earlier: shown.flatMap((sheet) => columnsOf(sheet, body, allShown)),
    write: (teeth, inWords) => field.write(teeth, inWords, "now"),
  };
}

/** The teeth of this sheet that the earlier one tested as well; at first only the tooth that the case is about. */
function columnsOf(sheet: PartOf<"findings">, { teeth }: Body, all: boolean): readonly EarlierColumn[] {
  const known = teeth.filter(({ tooth, role }) => role === "tooth" || (all && isOn(sheet, tooth)));
  return known.map(({ tooth }) => ({ sheet, tooth }));
}

const isOn = ({ body }: PartOf<"findings">, tooth: string): boolean => body.teeth.some((one) => one.tooth === tooth);
