import { QueryClient } from "@tanstack/react-query";
import { describe, expect, it } from "vitest";
import { notOvertaken } from "./not-overtaken.ts";

const key = ["case", "a"];

describe("a reading on its way", () => {
  it("does not put back what stood before a gesture that was recorded meanwhile", async () => {
    const client = new QueryClient();
    client.setQueryData(key, "at first");
    const answers: ((view: string) => void)[] = [];
    const read = () => new Promise<string>((answer) => answers.push(answer));
    const fetched = client.fetchQuery({ queryKey: key, queryFn: () => notOvertaken(client, key, read) });
    await Promise.resolve();
    client.setQueryData(key, "with the gesture");
    answers[0]?.("at first");
    await new Promise((done) => setTimeout(done, 0));
    expect(client.getQueryData(key)).toBe("with the gesture");
    expect(answers).toHaveLength(2);
    answers[1]?.("with the gesture and another window's");
    expect(await fetched).toBe("with the gesture and another window's");
    expect(client.getQueryData(key)).toBe("with the gesture and another window's");
  });

  it("is asked for once where nothing was recorded meanwhile", async () => {
    const client = new QueryClient();
    let asked = 0;
    const read = async () => {
      asked += 1;
      return "as it stands";
    };
    await client.fetchQuery({ queryKey: key, queryFn: () => notOvertaken(client, key, read) });
    expect([asked, client.getQueryData(key)]).toEqual([1, "as it stands"]);
  });
});
