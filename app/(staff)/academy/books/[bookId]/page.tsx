import type { Metadata } from "next";
import { BookScreen } from "@/components/academy/book-screen";
import { read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Rule book" };

export default async function BookPage({ params }: { params: Promise<{ bookId: string }> }) {
  const { bookId } = await params;
  const me = await read((api) => api.account.me({}));
  const answer = await read((api) => api.ruleBooks.book({ bookId }));
  const [site] = await read((api) => api.sites.list({}));
  return <BookScreen answer={answer} zone={site?.zone ?? "UTC"} isAdmin={me.roles.includes("admin")} />;
}
