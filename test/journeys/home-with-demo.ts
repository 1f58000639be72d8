import { rmSync } from "node:fs";
import type { TestProject } from "vitest/node";
import { newHome, startServer } from "./canalog.ts";

declare module "vitest" {
  export interface ProvidedContext {
    /** A data folder that the first start has filled with the demo; it is copied, never opened. */
    homeWithDemo: string;
  }
}

/** Lets the program start once on an empty folder, as a new user would, and keeps what it made for journeys that begin after that. */
export default async function homeWithDemo(project: TestProject): Promise<() => void> {
  const home = newHome("before the first start");
  const server = await startServer(home);
  await server.stop();
  project.provide("homeWithDemo", home);
  return () => rmSync(home, { recursive: true, force: true });
}
