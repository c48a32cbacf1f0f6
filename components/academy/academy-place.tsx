import Link from "next/link";

/** Where a page of the academy's settings lies, with the way back to all of them. */
export function AcademyPlace({ href = "/academy", label = "Academy" }: { href?: string; label?: string }) {
  return <Link href={href}>{label}</Link>;
}
