import { attachmentSchema, largestAttachment, problem } from '@tiegel/contract';
import type { StoredAttachment } from '@tiegel/store';
import { z } from 'zod';
import { attachmentType } from '../melts/attachmentType.ts';
import type { Parts, Server } from '../parts.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';

const tags = ['melts'];
const mostAttachments = 50;
const longestName = 120;
const content = 'application/octet-stream';
const melt = z.object({ id: z.string().describe('Id of the melt.') });
const one = melt.extend({ attachment: z.string().describe('Id of the attachment.') });

/** What a browser may show in the page; all else it saves. */
const shown = new Set(['image/png', 'image/jpeg', 'image/webp']);

/**
 * POST /melts/:id/attachments, GET and DELETE /melts/:id/attachments/:attachment: pictures and
 * measurements of a melt. A body is the file itself; its type is told by what is in it, and it is
 * served as that type alone, sandboxed, never run.
 */
export function attachmentRoutes(app: Server, { melts, attachments: { table, files } }: Parts): void {
  const found = (id: string, attachment: string): StoredAttachment => {
    const stored = melts.view(id).attachments.find((file) => file.id === attachment);
    if (stored === undefined) throw notFound(attachment);
    return stored;
  };

  app.register(async (uploads) => {
    uploads.removeAllContentTypeParsers();
    uploads.addContentTypeParser(content, { parseAs: 'buffer' }, (_request, body, done) => done(null, body));
    (uploads as Server).post(
      '/melts/:id/attachments',
      {
        bodyLimit: largestAttachment,
        schema: {
          summary: 'Attaches a file to a melt: a picture, a PDF or the text of a measurement',
          description: 'The body is the file itself, of at most 20 MB: curl --data-binary @scan.xy.',
          tags,
          consumes: [content],
          params: melt,
          querystring: z.object({ name: z.string().describe('Write the name of the file.') }),
          body: z.any().describe('The file'),
          response: { 201: attachmentSchema, ...problemAnswers(404, 409, 413, 415) },
        },
      },
      async (request, reply) => {
        const { id } = request.params;
        const present = melts.view(id).attachments;
        const name = nameOf(request.query.name);
        const file = request.body as Buffer | undefined;
        const type = file === undefined ? null : attachmentType(file);
        if (file === undefined || type === null) throw problem('attachment/type', { name });
        // Before the file is written, to spare that; what counts is whether the table takes it.
        if (present.length >= mostAttachments) throw tooMany();
        const attachment = { id: table.newAttachmentId(), name, type, size: file.length };
        await files.write(attachment.id, file);
        try {
          const isTaken = table.attach(id, attachment, new Date().toISOString(), mostAttachments);
          if (!isTaken) throw tooMany();
        } catch (error) {
          await files.remove(attachment.id).catch(() => {});
          throw error;
        }
        return reply
          .code(201)
          .header('location', `/api/v1/melts/${id}/attachments/${attachment.id}`)
          .send(found(id, attachment.id));
      },
    );
  });

  app.get(
    '/melts/:id/attachments/:attachment',
    {
      exposeHeadRoute: false,
      schema: {
        summary: 'An attachment as it was given',
        tags,
        params: one,
        response: { 200: z.any().describe('The file'), ...problemAnswers(404) },
      },
    },
    async (request, reply) => {
      const { id, name, type, size } = found(request.params.id, request.params.attachment);
      // Before the headers: they promise what only a file that is there can keep.
      const file = await files.read(id, size);
      const disposition = shown.has(type) ? 'inline' : 'attachment';
      return reply
        .type(type === 'text/plain' ? 'text/plain; charset=utf-8' : type)
        .header('content-length', size)
        .header('content-disposition', `${disposition}; filename*=UTF-8''${encoded(name)}`)
        .header('content-security-policy', "default-src 'none'; sandbox")
        .header('cache-control', 'private, max-age=31536000, immutable')
        .serializer((stream: unknown) => stream as never)
        .send(file as never);
    },
  );

  app.delete(
    '/melts/:id/attachments/:attachment',
    {
      schema: {
        summary: 'Takes an attachment away; it can be brought back',
        tags,
        params: one,
        response: { 200: z.array(attachmentSchema), ...problemAnswers(404) },
      },
    },
    (request) => {
      const { id, attachment } = request.params;
      found(id, attachment);
      table.remove(id, attachment, new Date().toISOString());
      return table.attachments(id);
    },
  );

  app.post(
    '/melts/:id/attachments/:attachment/restore',
    {
      schema: {
        summary: 'Brings back an attachment that was taken away',
        tags,
        params: one,
        response: { 200: z.array(attachmentSchema), ...problemAnswers(404, 409) },
      },
    },
    (request) => {
      const { id, attachment } = request.params;
      melts.view(id);
      if (!table.hadAttachment(id, attachment)) throw notFound(attachment);
      if (!table.restore(id, attachment, mostAttachments)) throw tooMany();
      return table.attachments(id);
    },
  );
}

const notFound = (id: string) => problem('attachment/not-found', { id: id.slice(0, 20) });
const tooMany = () => problem('attachment/too-many', { limit: mostAttachments });

/** The name to show; never a path. */
function nameOf(name: string): string {
  const shownName = name.trim();
  if (shownName === '' || shownName.length > longestName || /[\p{Cc}/\\]/u.test(shownName)) {
    throw problem('attachment/name', {}, '/name');
  }
  return shownName;
}

/** For a header: RFC 5987. */
const encoded = (name: string): string =>
  encodeURIComponent(name).replaceAll(
    /['()*]/g,
    (sign) => `%${sign.charCodeAt(0).toString(16).toUpperCase()}`,
  );
