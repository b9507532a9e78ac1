using System.Security.Cryptography;

namespace GrindShop.Shop.Records;

/// <summary>Codes that open a page to whoever has them: drawn at random, of letters and digits that are not mistaken for one another on the phone.</summary>
public static class SecretCode
{
    private const string Alphabet = "23456789ABCDEFGHJKMNPQRSTVWXYZ";

    public static string Draw(int length) => RandomNumberGenerator.GetString(Alphabet, length);
}
