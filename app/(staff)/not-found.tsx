import { NothingHere } from "@/components/shell/nothing-here";

export default function NotFound() {
  return <NothingHere />;
}
