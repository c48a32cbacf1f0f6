import { NothingHere } from "@/components/shell/nothing-here";

export default function NotFound() {
  return (
    <main id="main" className="lonePage">
      <NothingHere />
    </main>
  );
}
