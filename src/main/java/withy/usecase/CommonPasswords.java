package withy.usecase;

import java.util.Set;

/** Passwords of eight and more characters that anybody tries first. */
final class CommonPasswords {
  static final Set<String> ALL =
      Set.of(
          ("""
          12345678 123456789 1234567890 12341234 11111111 111111111 00000000 87654321 11223344
          12121212 123123123 22222222 88888888 99999999 01234567 123456789a 1q2w3e4r 1qaz2wsx
          1q2w3e4r5t q1w2e3r4 qwertyui qwertyuiop qwerty12 qwerty123 qwerty1234 asdfghjk asdfghjkl
          zxcvbnm1 zaq12wsx azertyuiop aa123456 a1234567 a12345678 abcd1234 abc12345 abcdefgh
          abcdefghi password password1 password12 password123 password1234 passw0rd p@ssword
          p@ssw0rd pa55word passwort motdepasse letmein1 letmein123 welcome1 welcome123 iloveyou
          iloveyou1 sunshine sunshine1 princess princess1 football football1 baseball baseball1
          superman superman1 trustno1 starwars whatever computer internet michelle jennifer
          changeme changeme1 changeit secret123 admin123 admin1234 administrator adminadmin
          testtest test1234 default1 instructor instructor1 teacher1 teacher123 sailing1 sailing123
          sailboat captain1 skipper1 starboard boating1 boatschool navigation withywithy""")
              .strip()
              .split("\\s+"));

  private CommonPasswords() {}
}
