package halfwave.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Against the example of RFC 9562 (Universally Unique IDentifiers, 2024), appendix A.4. */
class StatementIdReferenceTest {

  private static final UUID OF_HOSTS = UUID.fromString("6ba7b810-9dad-11d1-80b4-00c04fd430c8");

  @Test
  void theExampleOfVersionFive() {
    assertThat(StatementId.of(OF_HOSTS, "www.example.com"))
        .hasToString("2ed6657d-e927-568b-95e1-2665a8aea6a2");
  }

  @Test
  void versionAndVariantAreThoseOfTheStandard() {
    UUID id = StatementId.of(StatementId.OF_IRIS, "https://school.example/ñ");
    assertThat(id.version()).isEqualTo(5);
    assertThat(id.variant()).isEqualTo(2);
  }
}
