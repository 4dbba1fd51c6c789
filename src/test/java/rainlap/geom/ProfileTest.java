package rainlap.geom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class ProfileTest {
    @Test
    void profilesOfTheSameStretchesAreEqualHoweverTheyCameAbout() {
        Profile whole = Profile.constant(0, 10, 5);
        Profile joined = new Profile.Builder().add(0, 4, 5, 5).add(4, 10, 5, 5).build();
        assertEquals(whole, joined);
        assertEquals(whole.hashCode(), joined.hashCode());
        assertNotEquals(whole, Profile.constant(0, 10, 6));
        assertNotEquals(whole, whole.shifted(1));
    }

    @Test
    void aBuilderBeginsAnewWhenItHasBuilt() {
        Profile.Builder b = new Profile.Builder();
        Profile first = b.add(0, 4, 5, 5).build();
        Profile second = b.add(4, 10, 5, 5).build();
        assertEquals(Profile.constant(0, 4, 5), first);
        assertEquals(Profile.constant(4, 10, 5), second);
        assertEquals(List.of(), b.build().stretches());
    }
}
