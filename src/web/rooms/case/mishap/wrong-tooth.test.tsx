import { QueryClient, QueryClientProvider } from "@tanstack/react-query";
import { renderToStaticMarkup } from "react-dom/server";
import { expect, it } from "vitest";
import { part } from "../../../../../test/sample-case.ts";
import { firstSettings, type Settings } from "../../../../record/settings.ts";
import { EditPart, Within } from "../../../parts/fields/editing.tsx";
import { WrongTooth } from "./wrong-tooth.tsx";

const teeth = [
  { twoDigit: "16", universal: "3", quadrant: "upper right 6", name: "upper right first molar" },
  { twoDigit: "26", universal: "14", quadrant: "upper left 6", name: "upper left first molar" },
];
function readAs(tooth: string | undefined, notation: Settings["notation"]): string | undefined {
  const client = new QueryClient();
  client.setQueryData(["teeth"], teeth);
  client.setQueryData(["settings"], { ...firstSettings, notation });
  const mishap = part("mishap", "mishap-1", {
    ...{ on: "2026-01-02", what: "wrongTooth", third: "notRecorded", bend: "notRecorded", handled: "open" },
    ...{ toldPatient: "notYet", story: "", wrongTooth: { tooth, noticedBy: "", restored: "" } },
  });
  const html = renderToStaticMarkup(
    <QueryClientProvider client={client}>
      <EditPart part={mishap} title="Mishap" draft={undefined} book={undefined}>
        <Within at="wrongTooth">
          <WrongTooth />
        </Within>
      </EditPart>
    </QueryClientProvider>,
  );
  return /role="status">([^<]*)</.exec(html)?.[1];
}

it("reads the tooth back as the person writes teeth, with its name", () => {
  // Universal numbers run from the upper right third molar, 1, over the upper left first molar, 14.
  expect(readAs("26", "universal")).toBe("14, upper left first molar");
  expect(readAs("26", "quadrant")).toBe("upper left 6, upper left first molar");
  expect(readAs("26", "twoDigit")).toBe("26, upper left first molar");
});

it("says nothing where no tooth is told", () => {
  expect(readAs(undefined, "universal")?.trim()).toBe("");
});
