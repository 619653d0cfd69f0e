// A certificate that a machine of the test's signs for itself: X.509 version 1 in DER (RFC 5280), on curve P-256.

import { generateKeyPairSync, sign } from 'node:crypto';

export interface OwnCertificate {
  readonly key: string;
  readonly cert: string;
}

export function ownCertificate(name: string): OwnCertificate {
  const { privateKey, publicKey } = generateKeyPairSync('ec', { namedCurve: 'P-256' });
  const ecdsaWithSha256 = sequence(Buffer.from('06082a8648ce3d040302', 'hex'));
  const commonName = Buffer.from('0603550403', 'hex');
  const named = sequence(der(0x31, sequence(commonName, der(0x0c, Buffer.from(name)))));
  const always = sequence(utcTime('200101000000Z'), utcTime('491231235959Z'));
  const spki = publicKey.export({ type: 'spki', format: 'der' });
  const content = sequence(der(0x02, Buffer.from([1])), ecdsaWithSha256, named, always, named, spki);
  const signature = der(0x03, Buffer.concat([Buffer.from([0]), sign('sha256', content, privateKey)]));
  const whole = sequence(content, ecdsaWithSha256, signature).toString('base64');
  return {
    key: privateKey.export({ type: 'pkcs8', format: 'pem' }).toString(),
    cert: `-----BEGIN CERTIFICATE-----\n${whole.replaceAll(/(.{64})/g, '$1\n')}\n-----END CERTIFICATE-----\n`,
  };
}

function der(tag: number, content: Buffer): Buffer {
  const { length } = content;
  // The shortest form alone: browsers take no other.
  const long = length < 256 ? [0x81, length] : [0x82, length >> 8, length & 0xff];
  const head = [tag, ...(length < 128 ? [length] : long)];
  return Buffer.concat([Buffer.from(head), content]);
}

const sequence = (...items: readonly Buffer[]): Buffer => der(0x30, Buffer.concat(items));
const utcTime = (time: string): Buffer => der(0x17, Buffer.from(time));
