declare const catalogue: Record<string, Record<string, string>>;
export default catalogue;
