import { describe, expect, it } from 'vitest';
import { passwordFault } from '@/lib/people/password';
import { isCommonPassword } from '@/lib/server/auth/common-passwords';

const known = ['k.marsh@ternlane.example', 'Karla Marsh', 'Tern Lane School'];
const fault = (password: string) => passwordFault({ password, isCommon: isCommonPassword, known });

describe('passwordFault', () => {
  it.each(['correct horse battery', 'glove-violet-anchor', 'Zw9!kq#Lm2$x', 'пароли бывают длинные', 'brass kettle under ternlane'])('takes %s', (password) => {
    expect(fault(password)).toBeNull();
  });

  it('counts characters as people do, not the parts some of them are stored in', () => {
    expect(fault('🐙🐢🐙🦊🐙🐢🐸🐙🐢🐙🦊')).toContain('This has 11');
    expect(fault('short')).toContain('at least 12');
    expect(fault('')).toBe('Enter a password');
    expect(fault('x1'.repeat(65))).toContain('at most 128');
  });

  it.each(['Finalfantasy', 'ADMINISTRATOR', 'Password1234', '!!sunshine2026!!', 'dragondragon', '123football'.padEnd(14, '9')])('refuses the common %s', (password) => {
    expect(fault(password)).toContain('tried first');
  });

  it.each(['aaaaaaaaaaaa', 'abababababab', 'abcdefghijklm', '987654321000', '112233445566', 'ponmlkjihgfe'])('refuses the monotone %s', (password) => {
    expect(fault(password)).not.toBeNull();
  });

  it.each(['ternlaneschool', 'k.marsh@ternlane.example', 'KarlaMarsh26', 'marshmarshmarsh'])('refuses %s, which others know', (password) => {
    expect(fault(password)).toContain('others know');
  });
});
