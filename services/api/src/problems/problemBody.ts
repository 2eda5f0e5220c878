import { type Fault, type ProblemCode, problems } from '@tiegel/contract/terms';
import { z } from 'zod';

const codes = Object.keys(problems) as [ProblemCode, ...ProblemCode[]];
const codeSchema = z.enum(codes).describe('One of the table of problems; a code keeps its meaning.');

/** The body of every answer that is an error: RFC 9457, with each thing that is wrong in `faults`. */
export const problemSchema = z
  .object({
    type: z.string().describe('urn:tiegel:problem: and the code'),
    title: z.string().describe('The kind of problem, the same for each of its code'),
    status: z.number().int(),
    detail: z.string().describe('What is wrong, in whole sentences'),
    code: codeSchema,
    faults: z.array(
      z.object({
        code: codeSchema,
        pointer: z.string().describe('JSON pointer into the request: its body, or /NAME of a parameter'),
        detail: z.string(),
        remedy: z.string().describe('What would be right'),
      }),
    ),
  })
  .meta({ id: 'Problem', description: 'What is wrong, where, and what would be right.' });
type ProblemBody = z.infer<typeof problemSchema>;

function titleOf(code: ProblemCode): string {
  const words = code.slice(code.indexOf('/') + 1).replaceAll('-', ' ');
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** Whether something failed here, rather than in the request. */
export function isOwnFault({ code }: Fault): boolean {
  return problems[code].status >= 500;
}

/** The fault that the answer is named after: one of the server's own before one of the request. */
function leading(faults: readonly Fault[]): Fault {
  const own = faults.find(isOwnFault);
  const first = own ?? faults[0];
  if (first === undefined) throw new Error('A problem without a fault.');
  return first;
}

/** States faults as the body of an answer. At least one fault. */
export function problemBody(faults: readonly Fault[]): ProblemBody {
  const { code, detail } = leading(faults);
  const more = faults.length - 1;
  return {
    type: `urn:tiegel:problem:${code}`,
    title: titleOf(code),
    status: problems[code].status,
    detail: more === 0 ? detail : `${detail} ${more} more ${more === 1 ? 'thing is' : 'things are'} wrong.`,
    code,
    faults: faults.map(({ code, pointer, detail, remedy }) => ({ code, pointer, detail, remedy })),
  };
}
