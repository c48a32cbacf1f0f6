"use client";
import { QueryClient, QueryClientProvider } from "@tanstack/react-query";
import { createTRPCContext } from "@trpc/tanstack-react-query";
import { type ReactNode, useState } from "react";
import type { AppRouter } from "@/server/api/root";
import { apiClient } from "./api-client";

const wire = createTRPCContext<AppRouter>();

/** The typed options of every procedure, for `useQuery`. */
export const useApi = wire.useTRPC;

/** Holds the query cache of the browser. */
export function ApiProvider({ children }: { children: ReactNode }) {
  const [queryClient] = useState(
    () => new QueryClient({ defaultOptions: { queries: { staleTime: 10_000, retry: 1 } } }),
  );
  return (
    <QueryClientProvider client={queryClient}>
      <wire.TRPCProvider trpcClient={apiClient} queryClient={queryClient}>
        {children}
      </wire.TRPCProvider>
    </QueryClientProvider>
  );
}
