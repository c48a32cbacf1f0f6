import type { Metadata } from "next";
import { BooksScreen } from "@/components/academy/books-screen";
import { read } from "@/server/api/page-caller";

export const metadata: Metadata = { title: "Rule books" };

export default async function BooksPage() {
  const me = await read((api) => api.account.me({}));
  const list = await read((api) => api.ruleBooks.list({}));
  const [site] = await read((api) => api.sites.list({}));
  return <BooksScreen list={list} zone={site?.zone ?? "UTC"} isAdmin={me.roles.includes("admin")} />;
}
