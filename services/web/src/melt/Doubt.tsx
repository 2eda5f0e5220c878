/** What is possible, and probably a slip: it is said and does not stand in the way. */
export function Doubt({ children }: { children: string }) {
  return (
    <span className="small" role="status">
      {children}
    </span>
  );
}
