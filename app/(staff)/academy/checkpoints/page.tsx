import type { Metadata } from "next";
import { CheckpointsScreen } from "@/components/academy/checkpoints-screen";
import { read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Checkpoints" };

export default async function CheckpointsPage() {
  const me = await read((api) => api.account.me({}));
  const checkpoints = await read((api) => api.checkpoints.list({}));
  return <CheckpointsScreen checkpoints={checkpoints} isAdmin={me.roles.includes("admin")} />;
}
