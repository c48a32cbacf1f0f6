"use client";
import { Button } from "@/components/ui/button";

/** Opens the browser's own print, which also writes a PDF. */
export function PrintButton() {
  return (
    <Button variant="primary" onPress={() => window.print()}>
      Print, or save as PDF
    </Button>
  );
}
