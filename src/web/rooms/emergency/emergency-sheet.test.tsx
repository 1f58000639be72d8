import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { emergencyNames } from "../../../record/clinic-rules.ts";
import { emergencyGuide } from "../../../record/emergency/emergency-guide.ts";
import { CallFirst } from "./call-first.tsx";
import { EmergencySheet } from "./emergency-sheet.tsx";

const textOf = (html: string): string =>
  html
    .replaceAll("&#x27;", "'")
    .replaceAll(/<[^>]+>/g, " ")
    .replaceAll(/\s+/g, " ");

describe("whom to call", () => {
  it("is the clinic's first number, above all others", () => {
    const calls = [
      { who: "Ambulance", number: "0-112" },
      { who: "Supervisor", number: "4711" },
    ];
    const text = textOf(
      renderToStaticMarkup(<CallFirst clinic={{ calls, kit: "Room 2, red box", protocols: {} }} unread={false} />),
    );
    expect(text.indexOf("0-112")).toBeLessThan(text.indexOf("4711"));
    expect(text).toContain("Room 2, red box");
    expect(text).not.toContain("local emergency number");
  });

  it("is the place's own number where nobody has written one, with the way to the settings", () => {
    const none = renderToStaticMarkup(<CallFirst clinic={undefined} unread={false} toSettings={() => {}} />);
    expect(textOf(none)).toContain("Your local emergency number");
    expect(none).toContain("Write them in the settings");
  });

  it("is said to be unread while the server does not answer, and nothing is asked for", () => {
    const unread = textOf(renderToStaticMarkup(<CallFirst clinic={undefined} unread toSettings={() => {}} />));
    expect(unread).toContain("can't be read now");
    expect(unread).not.toContain("Write them");
  });
});

describe("the sheet of an emergency", () => {
  it.each(emergencyNames)(
    "of %s has the clinic's protocol before the usual steps, and none where there is none",
    (name) => {
      const guide = emergencyGuide(name);
      const drawn = (protocol: string | undefined) =>
        textOf(renderToStaticMarkup(<EmergencySheet guide={guide} protocol={protocol} />));
      const text = drawn("Ring the bell.\nThen room 2.");
      expect(text.indexOf("Ring the bell.")).toBeGreaterThan(0);
      expect(text.indexOf("Ring the bell.")).toBeLessThan(text.indexOf(guide.steps[0]?.says ?? "?"));
      for (const none of [undefined, ""]) expect(drawn(none)).not.toContain("Your clinic's protocol goes before");
    },
  );

  it("says of a line that was recalled that it is from memory", () => {
    const text = textOf(
      renderToStaticMarkup(<EmergencySheet guide={emergencyGuide("anaestheticOverdose")} protocol="" />),
    );
    expect(text).toContain("American society of regional anaesthesia 2020, from memory");
  });
});
