/** The six places of a probing, in the order in which they are written. */
const places = ["mesiobuccal", "buccal", "distobuccal", "mesiolingual", "lingual", "distolingual"] as const;

/** Six depths as they are written: `3 2 3 / 3 2 3`, a dash where one was not taken; empty where none was. */
export function probingInWords(depths: unknown): string {
  const taken = places.map((place) => {
    const depth: unknown = typeof depths === "object" && depths !== null ? Reflect.get(depths, place) : undefined;
    return typeof depth === "number" ? String(depth) : "-";
  });
  if (taken.every((depth) => depth === "-")) return "";
  return `${taken.slice(0, 3).join(" ")} / ${taken.slice(3).join(" ")}`;
}

/** What a written probing means: up to six depths in mm, a dash for one that was not taken. */
export function readProbing(text: string): { readonly value?: Record<string, number>; readonly fault?: string } {
  const written = text.replace(/[/|,;]/g, " ").trim();
  const parts = written === "" ? [] : written.split(/\s+/);
  if (parts.length > places.length) return { fault: "six depths at most" };
  if (parts.some((part) => part !== "-" && !/^\d+(\.\d+)?$/.test(part)))
    return { fault: "depths in mm, as 3 2 3 / 3 2 3" };
  const named = parts.flatMap((part, index) => (part === "-" ? [] : [[places[index], Number(part)]]));
  return { value: Object.fromEntries(named) };
}
