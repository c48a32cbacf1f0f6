/** The person a shell is drawn for, as `account.me` answers. */
export interface Me {
  personId: string;
  name: string;
  roles: readonly ("admin" | "coach")[];
  athletes: readonly { athleteId: string; givenName: string; isSelf: boolean; hasLeft: boolean }[];
  academyName: string;
  isDemo: boolean;
}
