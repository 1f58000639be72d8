import { QueryClient, QueryClientProvider } from "@tanstack/react-query";
import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { App } from "./app.tsx";
import { Announcer } from "./parts/announcer.tsx";
import { Refused } from "./record/api.ts";
import "./theme/fonts.css";
import "./theme/theme.css";
import "./theme/base.css";

const client = new QueryClient({
  defaultOptions: {
    queries: {
      retry: (count, error) => error instanceof Refused && error.code === "unreachable" && count < 3,
      retryDelay: 700,
      networkMode: "always",
    },
    mutations: { networkMode: "always" },
  },
});

const place = document.getElementById("app");
if (place === null) throw new Error("index.html has no element with the id app");
createRoot(place).render(
  <StrictMode>
    <QueryClientProvider client={client}>
      <Announcer>
        <App />
      </Announcer>
    </QueryClientProvider>
  </StrictMode>,
);
