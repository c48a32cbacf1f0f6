import { LinkButton } from "@/components/ui/link-button";
import { PageHeading } from "@/components/ui/page-heading";

export default function NotFound() {
  return (
    <main id="main" className="lonePage">
      <PageHeading
        question="Nothing here"
        detail="There is no such page, or it is not yours to see. Nothing was changed."
        actions={<LinkButton href="/">Back to your first screen</LinkButton>}
      />
    </main>
  );
}
