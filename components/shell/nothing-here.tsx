import { LinkButton } from "@/components/ui/link-button";
import { PageHeading } from "@/components/ui/page-heading";

/** What stands where there is no page, or one that belongs to others: the two are told apart by nothing. */
export function NothingHere() {
  return (
    <PageHeading
      question="Nothing here"
      detail="There is no such page, or it is not yours to see. Nothing was changed."
      actions={<LinkButton href="/">Back to your first screen</LinkButton>}
    />
  );
}
