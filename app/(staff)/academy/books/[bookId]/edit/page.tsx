import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { BookForm } from "@/components/academy/book-form";
import { pageNowMs, read } from "@/server/api/page-caller";
import { dayOf } from "@/server/domain/time/calendar-day";

export const metadata: Metadata = { title: "Change a rule book" };

export default async function EditBookPage({ params }: { params: Promise<{ bookId: string }> }) {
  const { bookId } = await params;
  const me = await read((api) => api.account.me({}));
  const { state, book } = await read((api) => api.ruleBooks.book({ bookId }));
  if (!me.roles.includes("admin") || state.standing !== "own") notFound();
  const [site] = await read((api) => api.sites.list({}));
  const today = dayOf(await pageNowMs(), site?.zone ?? "UTC");
  return <BookForm key={state.version} bookId={bookId} version={state.version} book={book} today={today} />;
}
