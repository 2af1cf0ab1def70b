package halfwave.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.validation.Area;
import halfwave.validation.Reference;
import halfwave.validation.Validated;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Against the example of RFC 9562 (Universally Unique IDentifiers, 2024), appendix A.4. */
@Validated(Area.EXCHANGE)
class StatementIdReferenceTest {

  private static final Reference STANDARD = Reference.seen("RFC 9562 (2024), appendix A.4");
  private static final UUID OF_HOSTS = UUID.fromString("6ba7b810-9dad-11d1-80b4-00c04fd430c8");

  @Test
  void theExampleOfVersionFive() {
    STANDARD.same(
        "identifier by name, the standard's example",
        "",
        "2ed6657d-e927-568b-95e1-2665a8aea6a2",
        StatementId.of(OF_HOSTS, "www.example.com").toString());
  }

  @Test
  void versionAndVariantAreThoseOfTheStandard() {
    UUID id = StatementId.of(StatementId.OF_IRIS, "https://school.example/ñ");
    assertThat(id.version()).isEqualTo(5);
    assertThat(id.variant()).isEqualTo(2);
  }
}
