import { isValidElement, type ReactNode } from "react";
import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { Router } from "wouter";
import { Boundary, type BoundaryState } from "./room-boundary.tsx";
import { isMissingPiece, type RoomTrouble, troubleInWords } from "./room-trouble.tsx";

const room = <p>the room</p>;
/** A boundary under an address in a state, as React would hold it. */
function standing(place: string, state: BoundaryState): ReactNode {
  const boundary = new Boundary({ place, children: room });
  Object.assign(boundary, { state });
  return boundary.render();
}
const markup = (node: ReactNode): string => renderToStaticMarkup(<Router ssrPath="/">{node}</Router>);

describe("a room's boundary", () => {
  it("shows the room while all is well", () => {
    expect(standing("/case/a", { place: "/case/a", broke: undefined })).toBe(room);
  });

  it("names the trouble, says that the record is kept, and offers both ways on", () => {
    const broke = Boundary.getDerivedStateFromError(new Error("no canal of that name"));
    const shown = markup(standing("/case/a", { place: "/case/a", ...broke }));
    expect(shown).toContain("no canal of that name");
    expect(shown).toContain("What was recorded is kept");
    expect(shown).toMatch(/<button[^>]*>Open again/);
    expect(shown).toMatch(/<a [^>]*href="\/"[^>]*>Go to the logbook/);
    expect(shown).not.toContain("the room");
  });

  it("takes any thing that was thrown, nothing among it", () => {
    const { broke } = Boundary.getDerivedStateFromError(undefined);
    expect(markup(standing("/", { place: "/", broke }))).toContain("This page stopped");
  });

  it("leaves the fault behind when the person goes elsewhere, and keeps it where they stay", () => {
    const broken = { place: "/case/a", ...Boundary.getDerivedStateFromError(new Error("x")) };
    expect(Boundary.getDerivedStateFromProps({ place: "/", children: room }, broken)).toEqual({
      place: "/",
      broke: undefined,
    });
    expect(Boundary.getDerivedStateFromProps({ place: "/case/a", children: room }, broken)).toBe(broken);
  });

  it("is dark over a dark room alone", () => {
    const broke = { error: new Error("x") };
    const ground = (place: string) => {
      const shown = standing(place, { place, broke });
      return isValidElement<Parameters<typeof RoomTrouble>[0]>(shown) ? shown.props.ground : undefined;
    };
    expect(ground("/case/a/light-box/film-1")).toBe("dark");
    expect(ground("/case/a/light-box")).toBe("dark");
    expect(ground("/case/a/documents")).toBe("paper");
  });

  it("says of a piece that could not be fetched why, and not the address that was asked for", () => {
    const missing = new TypeError("Failed to fetch dynamically imported module: http://127.0.0.1/assets/x.js");
    expect(isMissingPiece(missing)).toBe(true);
    expect(isMissingPiece(new TypeError("Failed to fetch"))).toBe(false);
    expect(troubleInWords(missing)).not.toContain("http");
    expect(troubleInWords(new Error("x is undefined"))).toBe(
      "The program met a fault of its own while it drew this page.",
    );
  });
});
